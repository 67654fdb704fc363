import { type Ask, type Skill, TEMPTATIONS } from '@sedgeline/engine/ability';
import type { RepPicture } from '@sedgeline/engine/ground';
import { drawnRep, type LaidLeg } from '@sedgeline/engine/session';
import { words } from '@sedgeline/words';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawRep } from './draw-rep.ts';
import { thingName } from './label-rep.ts';
import { sayRep } from './say-rep.ts';

const WORDS = words();
const NOUNS = ['blind', 'memory', 'mark', 'game', 'post'] as const;
const CARD = { width: 560, height: 400, labels: true };

/** Asks of what the sentence names a thing by, and of where it lies. */
const ask: fc.Arbitrary<Ask> = fc.record(
  {
    distanceM: fc.integer({ min: 5, max: 120 }),
    castM: fc.integer({ min: 5, max: 60 }),
    wayFraction: fc.double({ min: 0.1, max: 1, noNaN: true }),
    temptation: fc.constantFrom(...TEMPTATIONS),
    blind: fc.boolean(),
    otherDummies: fc.nat(3),
    gapDeg: fc.integer({ min: 15, max: 180 }),
  },
  { requiredKeys: [] },
);
const maybe = (...skills: readonly Skill[]): fc.Arbitrary<LaidLeg[]> =>
  fc.array(fc.record({ skill: fc.constantFrom(...skills), ask }), { maxLength: 1 });

/** Chains as they are asked: at most one way out, one stop, one cast, in the order in which they are run. */
const chain: fc.Arbitrary<LaidLeg[]> = fc
  .tuple(
    maybe('steady', 'heel', 'leave'),
    maybe('line', 'mark', 'hunt'),
    maybe('stop'),
    maybe('cast-left', 'cast-right', 'cast-back'),
    maybe('pickup'),
    maybe('delivery'),
    maybe('recall'),
  )
  .map((parts) => parts.flat());

/** The links of a rep's sentence. */
const linksOf = (legs: readonly LaidLeg[]): string[] =>
  WORDS.ask.rep(legs).toLowerCase().replace(/\.$/, '').split(', ');
/** What a link calls the thing that its line, mark or cast goes to: "line to the blind", "mark". */
const nounIn = (link: string) =>
  NOUNS.find((noun) => link.includes(`to the ${noun}`) || (noun === 'mark' && link === 'mark'));
const namedIn = (legs: readonly LaidLeg[]) =>
  new Set(
    linksOf(legs)
      .map(nounIn)
      .filter((noun) => noun !== undefined),
  );
const namesOnCard = (picture: RepPicture, ...roles: readonly string[]): string[] =>
  picture.things.filter(({ role }) => roles.includes(role)).map((thing) => thingName(thing, WORDS.picture));

const FIXED = { seed: 20_261_126, numRuns: 3000 };

describe('one name for one dummy', () => {
  it('calls what a line or a cast goes to as its own link of the sentence does, where that names it', () => {
    let named = 0;
    fc.assert(
      fc.property(chain, (legs) => {
        const picture = drawnRep(legs);
        const cast = legs.find(({ skill }) => skill.startsWith('cast-'))?.skill;
        for (const link of linksOf(legs)) {
          const noun = nounIn(link);
          if (noun === undefined) continue;
          named += 1;
          // Of a line that is cast aside, what it was sent to is passed by; a cast back goes on to it, or past it.
          const isCast = /^(left|right|back)\b/.test(link);
          const roles =
            isCast || cast === undefined ? ['asked'] : cast === 'cast-back' ? ['asked', 'other'] : ['other'];
          expect(namesOnCard(picture, ...roles)).toContain(noun);
        }
      }),
      FIXED,
    );
    // A line or a cast in most chains, and five of six temptations name a thing: fewer, and the chains have gone astray.
    expect(named).toBeGreaterThan(FIXED.numRuns / 2);
  });

  it('never gives one dummy two names in a sentence', () => {
    fc.assert(
      fc.property(chain, (legs) => {
        const picture = drawnRep(legs);
        expect(namedIn(legs).size).toBeLessThanOrEqual(
          picture.things.filter(({ goal }) => goal !== null).length,
        );
      }),
      FIXED,
    );
  });

  it('says and draws the same names: the text has every thing, and no label has another name', () => {
    fc.assert(
      fc.property(chain, (legs) => {
        const picture = drawnRep(legs);
        const said = sayRep(picture, WORDS.picture).toLowerCase();
        const names = picture.things.map((thing) => thingName(thing, WORDS.picture));
        for (const name of names) expect(said).toContain(`${name}, `);
        for (const { text } of drawRep(picture, CARD, WORDS.picture).labels) {
          const noun = NOUNS.find((each) => text.startsWith(`${each}, `));
          if (noun !== undefined) expect(names).toContain(noun);
        }
      }),
      { ...FIXED, numRuns: 300 },
    );
  });

  it('draws with a broken edge what is called a blind, and nothing else', () => {
    fc.assert(
      fc.property(chain, (legs) => {
        const picture = drawnRep(legs);
        const marks = drawRep(picture, CARD, WORDS.picture).marks.filter((mark) => mark.mark === 'thing');
        picture.things.forEach((thing, i) => {
          expect(marks[i]?.isUnseen).toBe(thingName(thing, WORDS.picture) === 'blind');
        });
      }),
      { ...FIXED, numRuns: 300 },
    );
  });
});

describe('worked by hand, in the words of the trade', () => {
  const line = (its: Ask): LaidLeg => ({ skill: 'line', ask: { distanceM: 76, ...its } });
  const stop: LaidLeg = { skill: 'stop', ask: { distanceM: 40, wayFraction: 0.53 } };
  const cast = (skill: Skill, its: Ask): LaidLeg => ({ skill, ask: { distanceM: 40, castM: 36, ...its } });
  const home: LaidLeg[] = [
    { skill: 'pickup', ask: {} },
    { skill: 'delivery', ask: {} },
  ];
  it.each<[LaidLeg[], string, string[]]>([
    [
      [line({ blind: true }), stop, cast('cast-left', {}), ...home],
      'Line to the blind, stop, left.',
      ['dummy, 36 m', 'blind, 76 m'],
    ],
    [
      [line({ temptation: 'placed-dummy' }), stop, cast('cast-left', { blind: true }), ...home],
      'Line to the memory, stop, left to the blind.',
      ['blind, 36 m', 'memory, 76 m'],
    ],
    [
      [line({ temptation: 'placed-dummy' }), stop, cast('cast-back', { blind: true }), ...home],
      'Line to the blind, stop, back to the blind.',
      ['blind, 36 m'],
    ],
    [[line({ blind: true }), ...home], 'Line to the blind.', ['blind, 76 m']],
    [
      [line({ temptation: 'post' }), stop, cast('cast-back', { temptation: 'placed-dummy' }), ...home],
      'Line to the post, stop, back to the memory.',
      ['memory, 36 m', 'post, 76 m'],
    ],
    [[line({ temptation: 'game' }), ...home], 'Line to the game.', ['game, 76 m']],
  ])('%#', (legs, sentence, labels) => {
    expect(WORDS.ask.rep(legs)).toBe(sentence);
    const texts = drawRep(drawnRep(legs), CARD, WORDS.picture).labels.map(({ text }) => text);
    for (const label of labels) expect(texts).toContain(label);
    const said = sayRep(drawnRep(legs), WORDS.picture).toLowerCase();
    for (const label of labels) expect(said).toContain(label);
  });
});
