import type { Skill } from '../ask.ts';
import { dogDesign } from './dog-design.ts';
import { SIDE, WIDENED } from './dog-effects.ts';
import { fitDog, parabolaOf } from './effect-likelihood.ts';
import { type EffectPosterior, effectPosterior } from './effect-posterior.ts';
import { fitGroupedOrdinal, type GroupedFit } from './grouped-ordinal.ts';
import { evidenceOf, type PatternFinding, type PatternLeg, stateOf } from './pattern.ts';
import { SIZES } from './sizes.ts';

/** Skills whose distance is how far out the dog is. */
const FAR_SKILLS: ReadonlySet<Skill> = new Set<Skill>([
  'line',
  'stop',
  'cast-left',
  'cast-right',
  'cast-back',
  'hunt',
  'mark',
  'recall',
]);
const SIZE = SIZES['distance-wall'];
/** A wall is placed to a tenth of its distance at best, so that candidates lie no closer. */
const LEAST_RATIO = 1.1;
/** The line on log2-distance is freer than among the other demands: a steep dog has no wall. */
const DISTANCE_LINE = { mean: 0.5, sd: 0.5 };

/** Nearer than this nothing is a wall (our judgement, 2026). */
const NEAREST_WALL_M = 8;

const distanceOf = ({ ask }: PatternLeg) => ask.distanceM ?? 5;

/** Where a wall may stand: between distances that were asked, with the legs it takes on either side, a tenth apart at least. */
export function wallCandidatesM(legs: readonly PatternLeg[]): number[] {
  const sorted = legs.map(distanceOf).sort((a, b) => a - b);
  const candidates: number[] = [];
  for (let k = SIZE.need; k <= sorted.length - SIZE.need; k++) {
    const betweenM = (sorted[k]! + sorted[k - 1]!) / 2;
    const isNew =
      sorted[k]! > sorted[k - 1]! && betweenM >= LEAST_RATIO * (candidates.at(-1) ?? NEAREST_WALL_M);
    if (isNew) candidates.push(betweenM);
  }
  return candidates;
}

/** Most legs that any wall would have on its scarcer side. */
function legsAtBestSplit(legs: readonly PatternLeg[]): number {
  const sorted = legs.map(distanceOf).sort((a, b) => a - b);
  return sorted.reduce((most, distanceM, k) => {
    const isSplit =
      k > 0 && distanceM > sorted[k - 1]! && distanceM + sorted[k - 1]! >= 2 * LEAST_RATIO * NEAREST_WALL_M;
    return isSplit ? Math.max(most, Math.min(k, sorted.length - k)) : most;
  }, 0);
}

/** The record's word on a wall at each candidate. One fit each, begun from the last. */
function wallsAt(
  legs: readonly PatternLeg[],
  candidatesM: readonly number[],
): (EffectPosterior & { atM: number })[] {
  const counted = legs.filter(({ weight }) => weight > 0);
  const isFar = ({ skill }: PatternLeg) => FAR_SKILLS.has(skill);
  const step = { name: 'wall', of: (leg: PatternLeg) => (isFar(leg) ? 1 : 0), prior: SIZE.wide };
  const design = dogDesign(legs, [SIDE, step], { ...WIDENED, distance: DISTANCE_LINE });
  let last: { readonly fit: GroupedFit; readonly gap: number } | null = null;
  return candidatesM.map((atM) => {
    design.rows.refill(design.column('wall'), (row) => (distanceOf(counted[row]!) > atM ? -1 : 0));
    last =
      last === null
        ? fitDog(design)
        : { fit: fitGroupedOrdinal(design.rows, design.prior, last.gap, last.fit), gap: last.gap };
    return { atM, ...effectPosterior(parabolaOf(design, last.fit, 'wall'), SIZE) };
  });
}

/**
 * Is there a distance past which it goes wrong? A line on log2-distance against the line plus a step down at each
 * candidate, each as likely as the next; the candidates' posterior says where.
 */
export function distanceWall(legs: readonly PatternLeg[]): PatternFinding {
  const far = legs.filter((leg) => FAR_SKILLS.has(leg.skill) && leg.weight > 0);
  const candidates = wallCandidatesM(far);
  if (candidates.length === 0) {
    const prior = effectPosterior({ from: -1, step: 1, logs: [0, 0, 0] }, SIZE);
    return {
      pattern: 'distance-wall',
      state: 'cant-say',
      strength: { mean: prior.mean, sd: prior.sd },
      probability: SIZE.priorChance * prior.beyondWide,
      evidence: [],
      tooLittle: { code: 'too-few', of: 'far-legs', have: legsAtBestSplit(far), need: SIZE.need },
    };
  }
  const walls = wallsAt(legs, candidates);
  const top = Math.max(...walls.map(({ logWide }) => logWide));
  const wideOf = walls.map(({ logWide }) => Math.exp(logWide - top));
  const total = wideOf.reduce((a, b) => a + b, 0);
  const ordinary = walls.reduce((sum, { logOrdinary }) => sum + Math.exp(logOrdinary - top), 0);
  const odds = (SIZE.priorChance / (1 - SIZE.priorChance)) * (total / ordinary);
  const chance = odds / (1 + odds);
  let mean = 0;
  let square = 0;
  let beyond = 0;
  let best = walls[0]!;
  walls.forEach((wall, i) => {
    const share = wideOf[i]! / total;
    mean += share * wall.mean;
    square += share * (wall.sd ** 2 + wall.mean ** 2);
    beyond += share * wall.beyondWide;
    if (wall.logWide > best.logWide) best = wall;
  });
  const probability = chance * beyond;
  const isMissed = ({ grade }: PatternLeg) => grade === 'missed';
  return {
    pattern: 'distance-wall',
    state: stateOf(probability),
    strength: { mean, sd: Math.sqrt(Math.max(0, square - mean * mean)) },
    probability,
    evidence: [
      evidenceOf(
        'past-wall',
        far.filter((leg) => distanceOf(leg) > best.atM),
        isMissed,
      ),
      evidenceOf(
        'short-of-wall',
        far.filter((leg) => distanceOf(leg) <= best.atM),
        isMissed,
      ),
    ],
    at: { distanceM: best.atM },
  };
}
