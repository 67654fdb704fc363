import type { Skill } from '../ask.ts';
import { DEMANDS, type DemandName, demandVector } from '../demands.ts';
import { shippedPriors } from '../priors.ts';
import { evidenceOf, type PatternFinding, type PatternLeg, stateOf } from './pattern.ts';
import { sharePosterior } from './share-posterior.ts';
import { SHARES, TOO_BIG_STRETCH } from './sizes.ts';

/** What the handler does not set: how long since, how tired, how young. */
const NOT_ASKED: ReadonlySet<DemandName> = new Set<DemandName>(['tired', 'lapse', 'stops-running', 'young']);
const LAST_SUCCESSES = 8;
/** Under this a leg is no step up (our judgement, 2026: a quarter of an ordinary step). */
const STEP_UP = 0.1;

/** How hard an ask is at the shipped weights, logits. */
function hardness(leg: PatternLeg, x: Float64Array): number {
  demandVector(leg.skill, leg.ask, leg.context, x);
  return DEMANDS.reduce(
    (sum, name, j) => (NOT_ASKED.has(name) ? sum : sum + shippedPriors.weightMean[name] * x[j]!),
    0,
  );
}

/** A leg that asked more than the hardest of the last eight successes at its skill, and how much more. */
export interface StepUp {
  readonly leg: PatternLeg;
  readonly stretch: number;
}

/** Every step up of a dog's legs, in order. A success is a good leg, or a fair one while the skill has no good one. */
export function stepsUp(legs: readonly PatternLeg[]): StepUp[] {
  const x = new Float64Array(DEMANDS.length);
  const successes = new Map<Skill, { good: boolean; hardness: number[] }>();
  const steps: StepUp[] = [];
  for (const leg of legs) {
    const hard = hardness(leg, x);
    const before = successes.get(leg.skill);
    if (before !== undefined) {
      const stretch = hard - Math.max(...before.hardness);
      if (stretch > STEP_UP) steps.push({ leg, stretch });
    }
    if (leg.grade === 'missed' || (leg.grade === 'fair' && before?.good === true)) continue;
    const good = leg.grade === 'good';
    const kept = before === undefined || (good && !before.good) ? [] : before.hardness;
    successes.set(leg.skill, { good, hardness: [...kept, hard].slice(-LAST_SUCCESSES) });
  }
  return steps;
}

/** Are the steps too big? The share of steps up of more than 1.2 logits, and what came of them. */
export function tooBigSteps(legs: readonly PatternLeg[]): PatternFinding {
  const size = SHARES['too-big-steps'];
  const steps = stepsUp(legs);
  const isBig = ({ stretch }: StepUp) => stretch > TOO_BIG_STRETCH;
  const isMissed = ({ leg }: StepUp) => leg.grade === 'missed';
  const isThin = steps.length < size.need;
  const seen = isThin ? [] : steps;
  const { mean, sd, probability } = sharePosterior(seen.filter(isBig).length, seen.length, size);
  return {
    pattern: 'too-big-steps',
    state: isThin ? 'cant-say' : stateOf(probability),
    strength: { mean, sd },
    probability,
    evidence: [
      evidenceOf('steps', steps, isBig),
      evidenceOf('big-steps', steps.filter(isBig), isMissed),
      evidenceOf(
        'smaller-steps',
        steps.filter((step) => !isBig(step)),
        isMissed,
      ),
    ],
    ...(isThin ? { tooLittle: { code: 'too-few', of: 'steps', have: steps.length, need: size.need } } : {}),
  };
}
