import { gaussHermite } from '../numeric/index.ts';
import { finiteBetween } from '../quantity/index.ts';
import { brakesAtM, meetsAtS, timeAtS } from './dog-run.ts';
import { chanceReactsBy, learnedReaction, type ReactionBelief } from './reaction-belief.ts';
import { speedOfSoundMPerS } from './speed-of-sound.ts';
import { checkStopConditions, type StopConditions } from './stop-conditions.ts';
import { stopAfterWhistle } from './stop-point.ts';

/** How much the parts of a stop differ from one to the next: standard deviations of their logarithms. */
export interface StopSpread {
  readonly runSpeedLogSd: number;
  readonly brakingLogSd: number;
  readonly reactionHandlerLogSd: number;
  readonly reactionDog: ReactionBelief;
}

/** The spread of stops whose dog reacts in `medianS` (our judgement, 2026: 8 % of speed, 20 % of braking, 25 % of the handler's reaction). */
export function usualStopSpread(medianS: number): StopSpread {
  return {
    runSpeedLogSd: 0.08,
    brakingLogSd: 0.2,
    reactionHandlerLogSd: 0.25,
    // A reaction of nothing at all has no logarithm: it spreads about a hundredth of a second.
    reactionDog: learnedReaction([], Math.max(0.01, medianS)),
  };
}

/** Points a dimension of the quadrature; twice as many move no end by 1 cm (measured, 2026). */
const RULE = gaussHermite(8);
const NODES = Array.from(RULE.nodes, (z, i) => [z, RULE.weights[i]!] as const);

/** One of the dogs and handlers that the quadrature sums over. */
interface Case {
  readonly weight: number;
  readonly at: StopConditions;
  readonly hearsS: number;
}

/** `sum over speed and braking (and the handler's reaction)` of the chance that the dog has halted by `haltAtM`. */
function chanceHaltsBy(haltAtM: number, cases: readonly Case[], reaction: ReactionBelief): number {
  return cases.reduce((sum, { weight, at, hearsS }) => {
    const neededS = timeAtS(brakesAtM(haltAtM, at, at.brakingMPerS2), at) - hearsS;
    return sum + weight * chanceReactsBy(neededS, reaction);
  }, 0);
}

function casesOf(
  at: StopConditions,
  spread: StopSpread,
  handlerNodes: readonly (readonly [z: number, weight: number])[],
  blowOf: (speeds: StopConditions, handlerFactor: number) => number,
): Case[] {
  const soundMPerS = speedOfSoundMPerS(at.airC);
  const cases: Case[] = [];
  for (const [zSpeed, wSpeed] of NODES)
    for (const [zBraking, wBraking] of NODES)
      for (const [zHandler, wHandler] of handlerNodes) {
        const one: StopConditions = {
          ...at,
          runSpeedMPerS: at.runSpeedMPerS * Math.exp(spread.runSpeedLogSd * zSpeed),
          brakingMPerS2: at.brakingMPerS2 * Math.exp(spread.brakingLogSd * zBraking),
        };
        const blowS = blowOf(one, Math.exp(spread.reactionHandlerLogSd * zHandler));
        const hearsS = meetsAtS(blowS, one, soundMPerS);
        cases.push({ weight: wSpeed * wBraking * wHandler, at: one, hearsS });
      }
  return cases;
}

/** Where the chance of having halted passes `share`, by halving between two places that bracket it, to 0.1 mm. */
function quantileM(
  share: number,
  cases: readonly Case[],
  reaction: ReactionBelief,
  fromM: number,
  beyondM: number,
): number {
  let [low, high] = [fromM, beyondM];
  while (chanceHaltsBy(high, cases, reaction) < share && high < 1e5) high += high - low;
  while (high - low > 1e-4) {
    const middle = (low + high) / 2;
    if (chanceHaltsBy(middle, cases, reaction) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

type Interval = readonly [low: number, high: number];

/**
 * The interval that holds the overrun with 90 % chance (5 to 95 %), the dog being `blowAtM` out when the whistle blows. Speed and
 * braking are log-normal and summed by Gauss-Hermite quadrature (Golub1969); given them the overrun rises with the dog's reaction,
 * whose law is known, so no draw is needed and the answer is the same on every machine.
 * @throws RangeError for a distance or conditions that cannot be
 */
export function overrunInterval90M(
  blowAtM: number,
  at: StopConditions,
  spread: StopSpread = usualStopSpread(at.reactionDogS),
): Interval {
  checkStopConditions(at);
  finiteBetween('blowAtM', blowAtM, 0, 5_000);
  const cases = casesOf(at, spread, [[0, 1]], (one) => timeAtS(blowAtM, one));
  const usualM = stopAfterWhistle(blowAtM, at).overrunM;
  const end = (share: number) =>
    quantileM(share, cases, spread.reactionDog, blowAtM, blowAtM + 2 * usualM + 1) - blowAtM;
  return [end(0.05), end(0.95)];
}

/** The same for the place of the halt, the handler deciding when the dog is `decideAtM` out: his own reaction comes in. */
export function haltInterval90M(
  decideAtM: number,
  at: StopConditions,
  spread: StopSpread = usualStopSpread(at.reactionDogS),
): Interval {
  checkStopConditions(at);
  finiteBetween('decideAtM', decideAtM, 0, 5_000);
  const cases = casesOf(
    at,
    spread,
    NODES,
    (one, factor) => timeAtS(decideAtM, one) + at.reactionHandlerS * factor,
  );
  const end = (share: number) => quantileM(share, cases, spread.reactionDog, decideAtM, decideAtM + 20);
  return [end(0.05), end(0.95)];
}
