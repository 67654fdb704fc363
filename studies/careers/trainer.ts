import type { Dice } from './dice.ts';
import { type Exercise, type Steps, type Thing, topOf } from './exercises.ts';

export type RepOutcome = 'well' | 'so-so' | 'missed' | 'excused';

/** What a trainer keeps in mind of one exercise with one dog. */
interface Line {
  steps: Steps;
  wells: number;
  misses: number;
  raised: Thing | null;
}

/** A way of asking; none of them is the program's own. */
export interface Policy {
  readonly name: string;
  /** Successes running before something is raised. */
  readonly patience: number;
  /** Chance that a rep is asked below (a known thing), or above, where the line of work stands. */
  readonly below: number;
  readonly above: number;
  /** Chance that a miss is followed by something easier. */
  readonly givesWay: number;
  /** Chance that what is raised is the distance, beside its turn among the others. */
  readonly farther: number;
  /** Chance that the last exercise is simply done again. */
  readonly repeats: number;
  /** Share of the sends with a stop that are run clean instead. */
  readonly clean: number;
  /** Chance that a leg is spoilt by handler or set-up. */
  readonly spoils: number;
  /** Chance of a break before each rep from the seventh on. */
  readonly breaks: number;
}

const policy = (name: string, numbers: Omit<Policy, 'name'>): Policy => ({ name, ...numbers });

export const LADDER_CLIMBER = policy('ladder-climber', {
  patience: 2,
  below: 0.2,
  above: 0,
  givesWay: 1,
  farther: 0.3,
  repeats: 0.5,
  clean: 0.25,
  spoils: 0.05,
  breaks: 0.3,
});
export const ADVENTUROUS = policy('adventurous', {
  patience: 1,
  below: 0.2,
  above: 0.35,
  givesWay: 0.7,
  farther: 0.4,
  repeats: 0.3,
  clean: 0.3,
  spoils: 0.07,
  breaks: 0.3,
});
export const CAREFUL = policy('careful', {
  patience: 4,
  below: 0.45,
  above: 0.03,
  givesWay: 1,
  farther: 0.3,
  repeats: 0.4,
  clean: 0.4,
  spoils: 0.03,
  breaks: 0.3,
});
export const REPEATER = policy('repeats-what-it-likes', {
  patience: 5,
  below: 0.1,
  above: 0.12,
  givesWay: 0.8,
  farther: 0.3,
  repeats: 0.8,
  clean: 0.15,
  spoils: 0.06,
  breaks: 0.3,
});
export const POLICIES: readonly Policy[] = [LADDER_CLIMBER, ADVENTUROUS, CAREFUL, REPEATER];

/** Misses running after which an exercise is worked on an easier step; after the first only the next rep is easier. */
const MISSES_TO_COME_DOWN = 2;

/** One trainer at work with one dog: where each exercise stands, and what is asked next. */
export class Trainer {
  readonly #policy: Policy;
  readonly #dice: Dice;
  readonly #bigSteps: number;
  readonly #lines = new Map<string, Line>();

  /** `bigSteps`: chance that what is raised is raised by far too much. */
  constructor(policy: Policy, dice: Dice, bigSteps: number) {
    this.#policy = policy;
    this.#dice = dice;
    this.#bigSteps = bigSteps;
  }

  /** `opensOrEnds`: the first and the last rep of a session are of something known. */
  asks(work: Exercise, opensOrEnds: boolean): Steps {
    const line = this.#line(work);
    const dice = this.#dice;
    if (opensOrEnds || dice.chance(this.#policy.below)) return this.#known(line.steps);
    if (line.misses > 0 && dice.chance(this.#policy.givesWay)) return this.#shifted(work, line.steps, -1, 3);
    if (dice.chance(this.#policy.above)) return this.#shifted(work, line.steps, 1, 1 + dice.below(3));
    return line.steps;
  }

  notes(work: Exercise, outcome: RepOutcome): void {
    if (outcome === 'excused') return;
    const line = this.#line(work);
    line.wells = outcome === 'well' ? line.wells + 1 : 0;
    line.misses = outcome === 'missed' ? line.misses + 1 : 0;
    if (line.wells >= this.#policy.patience) this.#raise(work, line);
    if (line.misses < MISSES_TO_COME_DOWN) return;
    line.misses = 0;
    this.#ease(work, line);
  }

  #line(work: Exercise): Line {
    const known = this.#lines.get(work.name);
    if (known !== undefined) return known;
    const made: Line = { steps: {}, wells: 0, misses: 0, raised: null };
    this.#lines.set(work.name, made);
    return made;
  }

  #raise(work: Exercise, line: Line): void {
    line.wells = 0;
    const big = this.#dice.chance(this.#bigSteps);
    const things = big ? 2 + this.#dice.below(2) : 1;
    for (let n = 0; n < things; n++) {
      const free = work.things.filter((thing) => (line.steps[thing] ?? 0) < topOf(thing));
      if (free.length === 0) return;
      const farther = free.includes('distance') && this.#dice.chance(this.#policy.farther);
      line.raised = farther ? 'distance' : this.#dice.pick(free);
      line.steps = moved(line.steps, line.raised, big ? 2 : 1);
    }
  }

  #ease(work: Exercise, line: Line): void {
    const last = line.raised;
    line.raised = null;
    line.steps =
      last !== null && (line.steps[last] ?? 0) > 0
        ? moved(line.steps, last, -1)
        : this.#shifted(work, line.steps, -1, 1);
  }

  /** Something well inside what is being worked on: each thing somewhere on the way up to it. */
  #known(steps: Steps): Steps {
    const share = 0.7 * this.#dice.uniform();
    return Object.fromEntries(
      Object.entries(steps).map(([thing, step]) => [thing, Math.round(share * step)]),
    );
  }

  #shifted(work: Exercise, steps: Steps, by: 1 | -1, times: number): Steps {
    let now = steps;
    for (let n = 0; n < times; n++) now = moved(now, this.#dice.pick(work.things), by);
    return now;
  }
}

function moved(steps: Steps, thing: Thing, by: number): Steps {
  return { ...steps, [thing]: Math.min(topOf(thing), Math.max(0, (steps[thing] ?? 0) + by)) };
}
