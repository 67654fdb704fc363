import { createScore } from '../../packages/engine/src/sound/learned-score.ts';
import { fMeasure } from '../sound/score.ts';
import type { Condition, SetName } from '../sound/sets.ts';
import { figuresTogether, fitInTwoSteps, tellAlone } from './fit-in-two-steps.ts';
import type { LabelledTone } from './gather-candidates.ts';

/** A recording's tones with what is asked of them. */
export interface JudgedRecording {
  set: SetName;
  condition: Condition;
  lastsS: number;
  asked: number;
  tones: readonly LabelledTone[];
}

type Scores = Map<LabelledTone, number>;

/** A single fit is judged where the ear has the mean of several, to be done in an hour: the ear is no worse. */
const ONE_FIT = 1;
const FOLDS = 5;
const LIMITS = [-1, -0.5, 0, 0.5, 1, 1.5, 2];

/** Sounds of one family, left out together: what is told from the others is told from something never heard. */
const FAMILIES: readonly (readonly string[])[] = [
  ['level'],
  ['glide'],
  ['arch'],
  ['sway'],
  ['stairs'],
  ['free'],
  ['piping', 'seesaw'],
  ['rise'],
  ['aloft', 'warble'],
  ['buzz', 'crickets'],
  ['squeal', 'whine'],
  ['chirps', 'rattle'],
];

/** Scores these tones by a fit to others. */
function scoreBy(
  fit: ReturnType<typeof fitInTwoSteps>,
  recordings: readonly JudgedRecording[],
  scores: Scores,
  isAsked: (tone: LabelledTone) => boolean = () => true,
): void {
  const score = createScore(fit.together);
  for (const { tones } of recordings) {
    tellAlone(tones, fit.alone);
    for (const tone of tones) if (isAsked(tone)) scores.set(tone, score(figuresTogether(tone)));
  }
}

function rows(title: string, recordings: readonly JudgedRecording[], scores: Scores): string[] {
  const names = [...new Set(recordings.map(({ set, condition }) => `${set} ${condition}`))];
  return names.flatMap((name) => {
    const group = recordings.filter(({ set, condition }) => `${set} ${condition}` === name);
    const asked = group.reduce((sum, one) => sum + one.asked, 0);
    const hours = group.reduce((sum, one) => sum + one.lastsS, 0) / 3600;
    const cells = LIMITS.map((limit) => {
      const heard = group.flatMap(({ tones }) => tones.filter((tone) => (scores.get(tone) ?? -9) > limit));
      const found = heard.filter(({ label }) => label === 'real').length;
      const stray = heard.filter(({ label }) => label === 'none').length;
      return `${fMeasure(found, asked, found + stray)?.toFixed(3) ?? 'none'}, ${(stray / hours).toFixed(0)}`;
    });
    return [`| ${title} ${name} | ${cells.join(' | ')} |`];
  });
}

const head = [
  `| F and false an hour, said from log odds of | ${LIMITS.join(' | ')} |`,
  `| --- | ${LIMITS.map(() => '---').join(' | ')} |`,
];

/** Each fifth of the recordings scored by numbers fitted to the other four. */
function scoredByRecording(recordings: readonly JudgedRecording[]): Scores {
  const scores: Scores = new Map();
  for (let fold = 0; fold < FOLDS; fold++) {
    const isOut = (_: JudgedRecording, k: number) => k % FOLDS === fold;
    const others = recordings.filter((one, k) => !isOut(one, k)).map(({ tones }) => tones);
    scoreBy(fitInTwoSteps(others, `fold ${fold}`, ONE_FIT), recordings.filter(isOut), scores);
  }
  return scores;
}

/**
 * The worst that is said of each tone of a family by numbers that were fitted to no tone during which that family sounded; where several
 * sounded, by the worst of these.
 */
function scoredByFamily(recordings: readonly JudgedRecording[]): Scores {
  const taught = recordings.map(({ tones }) => tones);
  const worst: Scores = new Map();
  for (const family of FAMILIES) {
    const isOf = ({ label, kinds }: LabelledTone) =>
      label === 'none' && kinds.some((kind) => family.includes(kind));
    const now: Scores = new Map();
    const fit = fitInTwoSteps(taught, `without ${family[0]}`, ONE_FIT, (tone) => !isOf(tone));
    scoreBy(fit, recordings, now, isOf);
    for (const [tone, score] of now)
      worst.set(tone, Math.max(score, worst.get(tone) ?? Number.NEGATIVE_INFINITY));
  }
  return worst;
}

/** Tables of both: recordings that were left out, and of these what was heard of families that were left out. */
export function judgeLeftOut(recordings: readonly JudgedRecording[]): string[] {
  const scores = scoredByRecording(recordings);
  const byRecording = rows('recordings left out,', recordings, scores);
  for (const [tone, score] of scoredByFamily(recordings)) scores.set(tone, score);
  return [...head, ...byRecording, ...rows('families left out too,', recordings, scores)];
}
