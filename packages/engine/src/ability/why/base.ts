import type { Ask, Skill } from '../ask.ts';
import type { AbilityFilter, DemandPart, LogitEstimate } from '../forecaster.ts';
import { type AskField, harderFields } from '../harder-fields.ts';
import type { LegQuestion } from '../leg.ts';

/** A leg that went well: good, or fair where the skill has no good one. */
export interface WellDone {
  readonly rep: string;
  readonly leg: number;
  readonly question: LegQuestion;
  readonly grade: 'good' | 'fair';
}

/** The base of an ask and how much harder the ask is. */
export interface BasedStep<Base extends WellDone = WellDone> {
  readonly base: Base;
  readonly harder: readonly (readonly AskField[])[];
  /** What is harder against every base that ties with it by the count of things, itself among them. */
  readonly tied: readonly (readonly (readonly AskField[])[])[];
  readonly stretch: LogitEstimate & { readonly parts: readonly DemandPart[] };
}

/** A base is looked for among so many of the last successes (contract). */
export const LAST_SUCCESSES = 10;

/**
 * The base of an ask: among the last ten successes at the skill (oldest first), the one from which the fewest things
 * are harder, then the one of least stretch, then the newest. A later stop on the same line is one thing
 * (`harderFields`). `null` with no success before. What costs much is worked out when it is read: read it before the filter learns more.
 */
export function basedStep<Base extends WellDone>(
  filter: AbilityFilter,
  question: LegQuestion,
  successes: readonly Base[],
): BasedStep<Base> | null {
  const among = successes.slice(-LAST_SUCCESSES).map((base) => ({
    base,
    harder: harderOf(question, base.question),
  }));
  const fewest = Math.min(...among.map(({ harder }) => harder.length));
  const tied = among.map(({ harder }) => harder).filter((harder) => harder.length === fewest);
  if (tied.length === 0) return null;
  let found: Pick<BasedStep<Base>, 'base' | 'harder' | 'stretch'> | null = null;
  // Only what ties at the fewest needs its stretch, which costs far more than counting fields, and is worked out when it is asked for.
  const best = () => {
    if (found !== null) return found;
    for (const { base, harder } of among) {
      if (harder.length > fewest) continue;
      const stretch = filter.stretch(question, base.question);
      if (found === null || stretch.mean <= found.stretch.mean) found = { base, harder, stretch };
    }
    if (found === null) throw new RangeError('base: expected a success among those that tie');
    return found;
  };
  return {
    tied,
    get base() {
      return best().base;
    },
    get harder() {
      return tied.length === 1 ? (tied[0] ?? best().harder) : best().harder;
    },
    get stretch() {
      return best().stretch;
    },
  };
}

type Harder = ReturnType<typeof harderFields>;

/** What is harder by the two asks: a search states the same asks again and again. */
const HARDER = new WeakMap<Ask, WeakMap<Ask, Map<Skill, Harder>>>();

function harderOf(now: LegQuestion, then: LegQuestion): Harder {
  let from = HARDER.get(now.ask);
  if (from === undefined) {
    from = new WeakMap();
    HARDER.set(now.ask, from);
  }
  let bySkill = from.get(then.ask);
  if (bySkill === undefined) {
    bySkill = new Map();
    from.set(then.ask, bySkill);
  }
  let harder = bySkill.get(now.skill);
  if (harder === undefined) {
    harder = harderFields(now.ask, then.ask, now.skill);
    bySkill.set(now.skill, harder);
  }
  return harder;
}
