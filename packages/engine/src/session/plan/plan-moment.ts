import {
  type AbilityFilter,
  type Ask,
  demandVector,
  type LegContext,
  type LegQuestion,
  type Skill,
} from '../../ability/index.ts';
import { askKey } from '../next/proposal.ts';
import type { NextInput } from '../next/session-state.ts';
import type { Success } from '../next/success.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';

/** Where a plan stands before one of its reps: what the earlier ones changed that a chance or a base depends on. */
export interface PlanMoment {
  readonly place: number;
  readonly repsSinceBreak: number;
  readonly stopsRunning: number | null;
  readonly worked: ReadonlySet<Skill>;
  readonly successes: ReadonlyMap<Skill, readonly Success[]>;
}

/** How a rep of the plan itself is named among the successes. */
const PLANNED = 'plan-';

/** Whether a success is one of the plan's own reps, still to come. */
export const isPlanned = ({ rep }: Success): boolean => rep.startsWith(PLANNED);

const SENDS: ReadonlySet<Skill> = new Set(['line', 'mark', 'hunt']);

/** As many successes as a base is looked for among. */
const KEPT_SUCCESSES = 10;

/**
 * The record seen from every place of a plan.
 *
 * **Chances of later reps** are the mean over all that may come of the earlier ones. In the model that mean is today's own chance
 * (total probability: today's belief is the average of tomorrow's), so nothing is observed beforehand: a plan that took its
 * early reps for done would be too hopeful of the late ones, and `plan-moment.test.ts` holds the mean against the filter
 * fed with each outcome. What the earlier reps change for certain is moved on: reps since the break (tiredness), stops running,
 * that a skill was worked today, and the bases, which count the plan's own earlier reps (contract, "Details").
 */
export class PlanRecord {
  readonly known: NextInput;
  readonly start: PlanMoment;
  readonly #filter: AbilityFilter;
  readonly #inputs = new WeakMap<PlanMoment, NextInput>();
  readonly #questions = new Map<string, LegQuestion>();
  readonly #contexts = new WeakMap<PlanMoment, Map<Skill, SkillContext>>();

  constructor(known: NextInput) {
    this.known = known;
    this.#filter = remembering(known.filter);
    this.start = {
      place: 0,
      repsSinceBreak: 0,
      stopsRunning: null,
      worked: new Set(),
      successes: known.successes,
    };
  }

  /** What the proposals of the next rep need, seen from a place of the plan. */
  inputAt(moment: PlanMoment): NextInput {
    let input = this.#inputs.get(moment);
    if (input === undefined) {
      const question = (skill: Skill, ask: Ask) => this.#question(skill, ask, moment);
      input = { ...this.known, filter: this.#filter, question, successes: moment.successes };
      this.#inputs.set(moment, input);
    }
    return input;
  }

  /** The moment after a rep that went as asked; `takesBreak` where a break follows it. */
  after(moment: PlanMoment, legs: readonly LaidLeg[], takesBreak: boolean): PlanMoment {
    const isStopped = legs.some(({ skill }) => skill === 'stop');
    const isSent = isStopped || legs.some(({ skill }) => SENDS.has(skill));
    const successes = new Map(moment.successes);
    for (const [leg, { skill, ask }] of legs.entries()) {
      const question = this.#question(skill, ask, moment);
      const done: Success = {
        rep: `${PLANNED}${moment.place + 1}`,
        leg,
        question,
        grade: 'good',
        asked: legs,
      };
      successes.set(skill, [...(successes.get(skill) ?? []), done].slice(-KEPT_SUCCESSES));
    }
    return {
      place: moment.place + 1,
      repsSinceBreak: takesBreak ? 0 : moment.repsSinceBreak + 1,
      stopsRunning: isSent ? (isStopped ? this.#stopsRunning(moment) + 1 : 0) : moment.stopsRunning,
      worked: new Set([...moment.worked, ...legs.map(({ skill }) => skill)]),
      successes,
    };
  }

  #stopsRunning(moment: PlanMoment): number {
    return moment.stopsRunning ?? this.known.question('line', {}).context.stopsRunning;
  }

  /** The question that a leg would be there. Moments that the model can't tell apart have one question, asked once. */
  #question(skill: Skill, ask: Ask, moment: PlanMoment): LegQuestion {
    const { demands, context } = this.#contextOf(skill, moment);
    const key = `${skill}|${demands}|${askKey(ask)}`;
    let question = this.#questions.get(key);
    if (question === undefined) {
      question = { ...this.known.question(skill, ask), context };
      this.#questions.set(key, question);
    }
    return question;
  }

  #contextOf(skill: Skill, moment: PlanMoment): SkillContext {
    let contexts = this.#contexts.get(moment);
    if (contexts === undefined) {
      contexts = new Map();
      this.#contexts.set(moment, contexts);
    }
    let found = contexts.get(skill);
    if (found === undefined) {
      const plain = this.known.question(skill, {}).context;
      const context: LegContext = {
        ...plain,
        repsSinceBreak: moment.repsSinceBreak,
        stopsRunning: moment.stopsRunning ?? plain.stopsRunning,
        daysSinceWorked: moment.worked.has(skill) ? 0 : plain.daysSinceWorked,
      };
      found = { context, demands: demandVector(skill, {}, context).join() };
      contexts.set(skill, found);
    }
    return found;
  }
}

/** What the program adds to an ask of a skill at a moment, and the demands that it comes to. */
interface SkillContext {
  readonly context: LegContext;
  readonly demands: string;
}

/** The filter with its answers kept by question: a search asks the same ones again and again. */
function remembering(filter: AbilityFilter): AbilityFilter {
  const forecasts = new WeakMap<LegQuestion, ReturnType<AbilityFilter['forecast']>>();
  const stretches = new WeakMap<LegQuestion, Map<LegQuestion, ReturnType<AbilityFilter['stretch']>>>();
  return {
    forecast(question) {
      let forecast = forecasts.get(question);
      if (forecast === undefined) {
        forecast = filter.forecast(question);
        forecasts.set(question, forecast);
      }
      return forecast;
    },
    stretch(now, then) {
      let from = stretches.get(now);
      if (from === undefined) {
        from = new Map();
        stretches.set(now, from);
      }
      let stretch = from.get(then);
      if (stretch === undefined) {
        stretch = filter.stretch(now, then);
        from.set(then, stretch);
      }
      return stretch;
    },
    because: (question) => filter.because(question),
    observe: () => {
      throw new TypeError('plan: a plan learns nothing');
    },
    tell: () => {
      throw new TypeError('plan: a plan learns nothing');
    },
    toldLeft: (dog, skill) => filter.toldLeft(dog, skill),
    ability: (dog, skill, atMs) => filter.ability(dog, skill, atMs),
    form: (dog, session) => filter.form(dog, session),
    gap: (dog) => filter.gap(dog),
    chain: (questions) => filter.chain(questions),
    snapshot: () => filter.snapshot(),
  };
}
