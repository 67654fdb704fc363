import { correctChances } from '@sedgeline/engine/ability';
import type { Fact } from '@sedgeline/journal';
import { describe, expect, it } from 'vitest';
import { createKennel, type KennelOfFacts } from '../kennel-of-facts.ts';
import { busyKennel } from './busy-kennel.fixture.ts';

const FACTS = busyKennel(1, 3, 14);

const stated = (kennel: KennelOfFacts) =>
  kennel
    .timeline()
    .stated.map(({ rep, leg, forecast, result }) => ({ rep, leg, grade: result.grade, forecast }));

function kennelOf(facts: readonly Fact[], options: Parameters<typeof createKennel>[0] = {}): KennelOfFacts {
  const kennel = createKennel(options);
  kennel.add(facts);
  return kennel;
}

/** Runs every fit that a kennel wants, as the worker does in its idle moments. */
function fitAll(kennel: KennelOfFacts) {
  const notes = [];
  for (let fitting = kennel.fitting(); fitting !== null; fitting = kennel.fitting()) {
    let at = fitting.next();
    while (at.done !== true) at = fitting.next();
    notes.push(at.value);
  }
  return notes;
}

describe("a kennel's own priors", () => {
  it('are fitted at the first session after 300 scored legs of three dogs, and say what they come from', () => {
    const { own, stated: legs } = kennelOf(FACTS).timeline();
    const [fit] = own.fits;
    expect(own.fits.length).toBe(1);
    expect(fit?.dogs).toBe(3);
    const before = legs.filter(({ result }) => result.atMs < fit!.fromMs && result.weight > 0);
    expect(fit?.legs).toBe(before.length);
    expect(before.length).toBeGreaterThanOrEqual(300);
    // Nine legs and more were still missing a session earlier.
    expect(before.length).toBeLessThan(310);
    // The days of this kennel differ by 0.9 where the shipped priors say 0.4.
    expect(fit!.priors.formSd).toBeGreaterThan(0.5);
  });

  it('change nothing that was stated before them', () => {
    const whole = kennelOf(FACTS);
    const fromMs = whole.timeline().own.fits[0]!.fromMs;
    const early = kennelOf(FACTS.filter(({ at }) => Date.parse(at) < fromMs));
    expect(early.timeline().own.fits).toEqual([]);
    expect(stated(whole).slice(0, stated(early).length)).toEqual(stated(early));
  });

  it('come in the end to the same made at once and made later, and leave the chances as they were until then', () => {
    const atOnce = kennelOf(FACTS);
    const later = kennelOf(FACTS, { fits: 'later' });
    expect(later.timeline().own.fits).toEqual([]);
    expect(stated(later)).not.toEqual(stated(atOnce));
    expect(fitAll(later).length).toBe(1);
    expect(stated(later)).toEqual(stated(atOnce));
    expect(later.timeline().filter.snapshot()).toEqual(atOnce.timeline().filter.snapshot());
    expect(later.fitting()).toBe(null);
  });

  it('are kept as a note, with the state of the walk, and found again', () => {
    const first = kennelOf(FACTS, { fits: 'later' });
    first.timeline();
    const notes = JSON.parse(JSON.stringify({ fits: fitAll(first), walk: first.walkNote() }));
    const second = kennelOf(FACTS, { fits: 'later', fitNotes: notes.fits, walkNote: notes.walk });
    expect(second.timeline().filter.snapshot()).toEqual(first.timeline().filter.snapshot());
    expect(second.fitting()).toBe(null);
    expect(stated(second)).toEqual(stated(first));
  });

  it('hear what was told of the dogs at its place: fed in any pieces, later or at once, with a note or without', () => {
    const told = [3, 60, 210, 380].map((place, n): Fact => {
      // Half a minute after some rep: in the middle of a session, before the fit and after it.
      const at = new Date(Date.parse(FACTS[place]!.at) + 30_000).toISOString();
      const body = {
        dog: `dog-${n % 3}`,
        skill: 'stop',
        farthestM: 40 * n,
        ...(n === 2 ? { withdrawn: true } : {}),
      };
      return { id: `told-${n}`, kind: 'level-stated', at, body };
    });
    const facts = [...FACTS, ...told].sort((a, b) => (a.at < b.at ? -1 : 1));
    const whole = kennelOf(facts);
    expect(whole.timeline().own.fits.length).toBe(1);
    expect(stated(whole)).not.toEqual(stated(kennelOf(FACTS)));
    const pieces = createKennel();
    for (let from = 0; from < facts.length; from += 37) {
      pieces.add(facts.slice(from, from + 37));
      pieces.timeline();
    }
    const late = createKennel();
    late.add(FACTS);
    late.timeline();
    late.add(told);
    const noted = kennelOf(facts, { fits: 'later' });
    noted.timeline();
    const fitNotes = fitAll(noted);
    const walkNote: unknown = JSON.parse(JSON.stringify(noted.walkNote()));
    const opened = kennelOf(facts, { fits: 'later', fitNotes, walkNote });
    for (const kennel of [pieces, late, noted, opened]) {
      expect(kennel.timeline().filter.snapshot()).toEqual(whole.timeline().filter.snapshot());
      expect(stated(kennel)).toEqual(stated(whole));
    }
  });

  it('are let go when an older fact changes the reps they came from', () => {
    const kennel = kennelOf(FACTS, { fits: 'later' });
    kennel.timeline();
    fitAll(kennel);
    const struck: Fact = {
      id: 'late',
      kind: 'rep-struck',
      at: '2026-06-01T10:00:00Z',
      body: { rep: 's-0-0-0' },
    };
    kennel.add([struck]);
    expect(kennel.timeline().own.fits).toEqual([]);
    fitAll(kennel);
    expect(stated(kennel)).toEqual(stated(kennelOf([...FACTS, struck])));
  });

  it('are not made for one dog or two', () => {
    for (const dogs of [1, 2]) expect(kennelOf(busyKennel(2, dogs, 40)).timeline().own.fits).toEqual([]);
  });

  it('walked session by session, equal a walk at one go', () => {
    const kennel = createKennel();
    for (let n = 0; n < FACTS.length; n += 37) {
      kennel.add(FACTS.slice(n, n + 37));
      kennel.timeline();
    }
    expect(stated(kennel)).toEqual(stated(kennelOf(FACTS)));
  });
});

describe('recalibration', () => {
  /** Two dogs whose days differ by 4 logits: too few to fit, and the shipped 0.4 makes the chances too sure. */
  const WILD = busyKennel(6, 2, 40, 4);

  it('is earned where the chances were too sure, is told, and moves those stated from then on', () => {
    const { own, stated: legs } = kennelOf(WILD).timeline();
    for (const { forecast, plain } of legs.slice(0, 150)) expect(forecast.chance).toEqual(plain);
    const recalibration = own.recalibration!;
    expect(recalibration.slope).toBeLessThan(1);
    expect(recalibration.interval90[1]).toBeLessThan(1);
    const { fromMs } = recalibration;
    const before = legs.filter(({ result }) => result.atMs < fromMs && result.weight > 0);
    expect(before.length).toBe(recalibration.legs);
    const after = legs.filter(({ result }) => result.atMs >= fromMs);
    expect(after.length).toBeGreaterThan(100);
    for (const { forecast, plain } of after)
      expect(forecast.chance).toEqual(correctChances(plain, recalibration));
  });

  it('is not earned by fewer than 150 legs, however wrong', () => {
    expect(kennelOf(busyKennel(6, 2, 7, 4)).timeline().own.recalibration).toBe(null);
  });

  it('leaves the chances of a leg and of a chain of that leg alike', () => {
    const kennel = kennelOf(WILD);
    expect(kennel.timeline().own.recalibration).not.toBe(null);
    const { filter } = kennel.timeline();
    const atMs = Date.parse('2026-06-01T09:00:00Z');
    const at = { session: null, ground: null, atMs, repsSinceBreak: 0 };
    const question = kennel.timeline().question('dog-0', 'stop', { distanceM: 20 }, at, kennel.record);
    const { chance, interval90 } = filter.forecast(question);
    const chain = filter.chain([question]);
    // The chain is integrated over the shared form by a rule of its own: 6 digits.
    expect(chain.noneMissed).toBeCloseTo(1 - chance.missed, 6);
    expect(chain.allGood).toBeCloseTo(chance.good, 2);
    expect(chain.interval90[0]).toBeCloseTo(interval90.notMissed[0], 2);
    expect(chance.missed + chance.fair + chance.good).toBeCloseTo(1, 12);
  });
});
