import { lapseDemand, youngDemand } from '../ability/demands.ts';
import { GAP_GRID } from '../ability/gap-learner.ts';
import { type AbilityPriors, DEMANDS, demandVector } from '../ability/index.ts';
import type { Random } from '../numeric/index.ts';
import type { DogBelief, SkillBelief } from './dog-belief.ts';
import { gainAt } from './own-gain.ts';
import type { GoalAsk, SeasonWork } from './season-goal.ts';
import { WalkClock } from './walk-clock.ts';

const DAYS = 7;
const WEEKS_A_MONTH = 30.4375 / DAYS;
const LAPSE = DEMANDS.indexOf('lapse');
const YOUNG = DEMANDS.indexOf('young');

/** The truth of one dog in one future, as the asks feel it. */
export interface Future {
  /** Ability and weights of each skill of the goal, in the places of its `support`. */
  readonly b: readonly Float64Array[];
  general: number;
  readonly odd: Float64Array;
  gap: number;
}

function gapAt(weights: Float64Array, share: number): number {
  let sum = 0;
  for (let g = 0; g < weights.length; g++) {
    sum += weights[g]!;
    if (share < sum) return GAP_GRID[g]!;
  }
  return GAP_GRID.at(-1)!;
}

/**
 * Two futures that are drawn as mirrors of each other: every normal that lifts one lowers the other (antithetic variates,
 * Hammersley1956), so that means are known far better than from two that know nothing of each other. Each alone is a fair
 * draw: today's truth from the filter, then the random walk and the fading gain (Gardner1985) of the sessions that are played.
 * The two share the days of their sessions and what a session is worth.
 */
export class TwinFutures {
  readonly #belief: DogBelief;
  readonly #asks: readonly GoalAsk[];
  readonly #priors: AbilityPriors;
  readonly #work: SeasonWork;
  readonly #random: Random;
  readonly twins: readonly [Future, Future];
  /** Demands of each ask in the week that was played to, in the order of `DEMANDS`. */
  readonly x: readonly Float64Array[];
  #clocks: WalkClock[] = [];
  #generalClock: WalkClock;
  #gained: number[] = [];
  #lastWorkedDay: (number | null)[] = [];
  #days: readonly number[] = [];
  #next = 0;
  #gainTimes = 1;

  constructor(
    belief: DogBelief,
    asks: readonly GoalAsk[],
    priors: AbilityPriors,
    work: SeasonWork,
    random: Random,
  ) {
    this.#belief = belief;
    this.#asks = asks;
    this.#priors = priors;
    this.#work = work;
    this.#random = random;
    const blank = (): Future => ({
      b: belief.skills.map(({ support }) => new Float64Array(support.length)),
      general: 0,
      odd: new Float64Array(belief.odd.length),
      gap: 0,
    });
    this.twins = [blank(), blank()];
    this.x = asks.map(({ skill, ask, context }) => demandVector(skill, ask, context));
    this.#generalClock = new WalkClock(null, 0);
  }

  /** Draws today's truth and the days of `weeks` weeks anew. */
  begin(weeks: number): void {
    const { skills, general, odd, gapWeights } = this.#belief;
    const random = this.#random;
    const [one, other] = this.twins;
    this.#days = this.#work.sessionDays(random, weeks);
    this.#next = 0;
    this.#gainTimes = this.#work.gains === undefined ? 1 : gainAt(this.#work.gains, random.uniform());
    const atMost = this.#priors.walkDaysAtMost;
    this.#clocks = skills.map(({ daysSinceLearned }) => new WalkClock(daysSinceLearned, atMost));
    this.#generalClock = new WalkClock(general.daysSinceLearned, atMost);
    this.#gained = skills.map(({ gained }) => gained);
    this.#lastWorkedDay = skills.map(() => null);
    skills.forEach((skill, k) => {
      this.#drawSkill(skill, one.b[k]!, other.b[k]!);
    });
    const generalOff = general.sd * random.normal();
    one.general = general.mean + generalOff;
    other.general = general.mean - generalOff;
    odd.forEach(({ mean, sd }, n) => {
      const off = sd * random.normal();
      one.odd[n] = mean + off;
      other.odd[n] = mean - off;
    });
    const share = random.uniform();
    one.gap = gapAt(gapWeights, share);
    other.gap = gapAt(gapWeights, 1 - share);
    this.#see(0);
  }

  #drawSkill({ mean, factor, support }: SkillBelief, one: Float64Array, other: Float64Array): void {
    one.set(mean);
    other.set(mean);
    const n = support.length;
    for (let j = 0; j < n; j++) {
      const z = this.#random.normal();
      for (let i = j; i < n; i++) {
        one[i]! += factor[i * n + j]! * z;
        other[i]! -= factor[i * n + j]! * z;
      }
    }
  }

  /** Plays on to the end of a week, the one after the last. */
  playTo(week: number): void {
    const day = DAYS * week;
    while (this.#next < this.#days.length && this.#days[this.#next]! <= day)
      this.#session(this.#days[this.#next++]!);
    this.#walk(day);
    this.#see(week);
  }

  #session(day: number): void {
    const { gainPerSession, gainFading } = this.#priors;
    this.#belief.skills.forEach(({ skill }, k) => {
      if (!(this.#random.uniform() < this.#work.share(skill))) return;
      const gain = this.#gainTimes * gainPerSession * gainFading ** this.#gained[k]!;
      for (const { b } of this.twins) b[k]![0]! += gain;
      this.#gained[k]! += 1;
      this.#lastWorkedDay[k] = day;
      this.#clocks[k]!.worked(day);
    });
    this.#generalClock.worked(day);
  }

  #walk(day: number): void {
    const { abilityWalkPerDay, weightWalkPerDay, generalWalkPerDay } = this.#priors;
    const random = this.#random;
    const [one, other] = this.twins;
    for (let k = 0; k < this.#clocks.length; k++) {
      const days = this.#clocks[k]!.advance(day);
      if (days === 0) continue;
      const abilitySd = Math.sqrt(days * abilityWalkPerDay);
      const weightSd = Math.sqrt(days * weightWalkPerDay);
      const up = one.b[k]!;
      const down = other.b[k]!;
      for (let i = 0; i < up.length; i++) {
        const step = (i === 0 ? abilitySd : weightSd) * random.normal();
        up[i]! += step;
        down[i]! -= step;
      }
    }
    const step = Math.sqrt(this.#generalClock.advance(day) * generalWalkPerDay) * random.normal();
    one.general += step;
    other.general -= step;
  }

  /** The asks as they would be asked at the end of a week: on known ground, fresh, so many weeks older. */
  #see(week: number): void {
    const asks = this.#asks;
    for (let n = 0; n < asks.length; n++) {
      const { context } = asks[n]!;
      const k = this.#belief.asks[n]!.skill;
      const worked = this.#lastWorkedDay[k]!;
      const never = this.#belief.skills[k]!.daysSinceLearned === null;
      const idle = never ? 0 : context.daysSinceWorked + DAYS * week;
      const x = this.x[n]!;
      x[LAPSE] = lapseDemand(worked === null ? idle : DAYS * week - worked);
      x[YOUNG] = youngDemand(context.ageMonths === null ? null : context.ageMonths + week / WEEKS_A_MONTH);
    }
  }

  /** Log-odds of good of each ask in one of the two, on a day of ordinary form, into `out`. */
  logOddsOfGood(future: Future, out: Float64Array): Float64Array {
    const { asks, skills } = this.#belief;
    for (let n = 0; n < asks.length; n++) {
      const { skill, odd } = asks[n]!;
      const { support } = skills[skill]!;
      const b = future.b[skill]!;
      const x = this.x[n]!;
      let eta = b[0]! + future.general + future.odd[odd]! - future.gap;
      for (let i = 1; i < support.length; i++) eta -= x[support[i]! - 1]! * b[i]!;
      out[n] = eta;
    }
    return out;
  }

  /**
   * Log-odds of good with some demands of one skill (`demands`, places in `DEMANDS`) at their easy end, from those with them, into
   * `out`.
   */
  without(
    future: Future,
    skill: number,
    demands: readonly number[],
    logOdds: Float64Array,
    out: Float64Array,
  ): Float64Array {
    const { asks, skills } = this.#belief;
    const { support } = skills[skill]!;
    const b = future.b[skill]!;
    out.set(logOdds);
    for (const j of demands) {
      const place = support.indexOf(j + 1);
      if (place < 0) continue;
      for (let n = 0; n < asks.length; n++)
        if (asks[n]!.skill === skill) out[n]! += this.x[n]![j]! * b[place]!;
    }
    return out;
  }
}
