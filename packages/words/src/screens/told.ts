import type { Tongue } from '../tongue.ts';
import type { Skill } from '../vocabulary.ts';

/** How strange a ground was, in the handler's words. */
type ToldGround = 'home' | 'known' | 'new';

/** What is wrong with what was written of a dog. */
type ToldFault = 'distance-unreadable' | 'distance-far' | 'nothing-told';

/** The question of the farthest, where a skill has one. */
const FARTHEST: Readonly<Record<Skill, ((name: string) => string) | null>> = {
  steady: null,
  line: (name) => `How far out has ${name} lately run straight?`,
  stop: (name) => `How far out has ${name} lately stopped well?`,
  'cast-left': (name) => `How far out has ${name} lately taken a cast to the left?`,
  'cast-right': (name) => `How far out has ${name} lately taken a cast to the right?`,
  'cast-back': (name) => `How far out has ${name} lately taken a cast back?`,
  hunt: (name) => `How far out has ${name} lately hunted well?`,
  mark: (name) => `How far out has ${name} lately marked well?`,
  pickup: null,
  delivery: (name) => `From how far out has ${name} lately come in and given to hand?`,
  recall: (name) => `From how far out has ${name} lately come straight in?`,
  heel: null,
  leave: null,
};

/** Words of what a handler tells of a dog before the record knows it. */
export function toldWords(t: Tongue) {
  const strangest: Readonly<Record<ToldGround, (name: string) => string>> = {
    home: () => 'at home',
    known: (name) => `on ground ${name} knows`,
    new: (name) => `on ground new to ${name}`,
  };
  const faults: Readonly<Record<ToldFault, string>> = {
    'distance-unreadable': 'Write a number, or leave it empty.',
    'distance-far': `Write ${t.length(400)} or less, or leave it empty.`,
    'nothing-told': 'Say how far or on what ground, or skip it.',
  };
  const what = (name: string, farthestM: number | null, ground: ToldGround | null): string => {
    if (farthestM === 0) return 'not yet';
    const where = ground === null ? [] : [strangest[ground](name)];
    const said = [...(farthestM === null ? [] : [`up to ${t.length(farthestM)}`]), ...where];
    return said.length === 0 ? 'it goes well' : said.join(', ');
  };
  const unit = t.units === 'yards' ? 'yards' : t.dialect === 'en-US' ? 'meters' : 'metres';
  const toBegin = 'It gives the chances a start, and about ten legs outweigh it. Leave out what you like.';
  return {
    title: (name: string): string => `What ${name} has done before`,
    teach: (name: string): string =>
      `Two questions a skill, while there is little record of ${name}. ${toBegin}`,
    skill: 'Which skill?',
    farthest: (skill: Skill, name: string): string | null => FARTHEST[skill]?.(name) ?? null,
    farthestHint: `In ${unit}. Empty: not said.`,
    where: 'Where was the strangest?',
    /** The question alone, of a skill that has no distance. */
    whereWell: 'Where has it lately gone well? The strangest counts.',
    ground: (ground: ToldGround, name: string): string => {
      const [first = '', ...rest] = strangest[ground](name);
      return first.toUpperCase() + rest.join('');
    },
    groundUnsaid: 'Not said',
    fault: (fault: ToldFault): string => faults[fault],
    save: 'Keep this',
    never: 'Not yet',
    neverHint: '“Not yet” is an answer too: a young dog need not have done any of it.',
    skip: 'Skip',
    another: 'Tell of a skill',
    change: 'Change',
    changeOf: (skill: string): string => `Change what you told: ${skill}`,
    takeBack: 'Take back',
    takeBackOf: (skill: string): string => `Take back what you told: ${skill}`,
    what,
    /** What a standing rests on, by its legs and the share that is left of what was told. */
    standing: (legs: number, left: number): string => {
      if (legs === 0) return 'Told, not yet seen.';
      const counted = t.count(legs, 'leg', 'legs');
      return left > 0.5
        ? `Rests more on what you told than on ${counted} seen.`
        : `Rests more on ${counted} seen than on what you told.`;
    },
    /** The same with what was told, under a skill's name. */
    said: (
      name: string,
      told: { readonly farthestM: number | null; readonly ground: ToldGround | null },
    ): string => `You told: ${what(name, told.farthestM, told.ground)}.`,
    inTable: (legs: number): string => (legs === 0 ? 'told, not yet seen' : 'rests on what was told'),
  };
}
