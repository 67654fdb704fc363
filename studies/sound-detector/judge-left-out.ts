import { likeliestReadings } from '../../packages/engine/src/sound/alternatives.ts';
import { blastFigures, surestReadings } from '../../packages/engine/src/sound/blast-choice.ts';
import { createScore } from '../../packages/engine/src/sound/learned-score.ts';
import { fMeasure } from '../sound/score.ts';
import type { Condition, SetName } from '../sound/sets.ts';
import { fitInTwoSteps, type TaughtRecording, tellAlone } from './fit-in-two-steps.ts';
import type { LabelledTone } from './label-candidates.ts';

/** A recording's tones with what is asked of them. */
export interface JudgedRecording extends TaughtRecording {
  set: SetName;
  condition: Condition;
  lastsS: number;
  asked: number;
}

type Scores = Map<LabelledTone, { logOdds: number; wholeLogOdds: number }>;

const FOLDS = 5;
const LIMITS = [-1, -0.5, 0, 0.5, 1, 1.5, 2];
/** A blast is found where its beginning is. */
const FOUND: readonly LabelledTone['label'][] = ['real', 'double', 'begun'];
/** What was scored by no fit is not heard. */
const UNJUDGED = { logOdds: -9, wholeLogOdds: -9 };

/** Sounds alike in how their notes go, left out together: what is told from the others is told from something never heard. */
const FAMILIES: readonly (readonly string[])[] = [
  ['level', 'piping', 'pipes', 'seesaw'],
  ['glide', 'rise', 'jumper'],
  ['arch', 'aloft', 'warble', 'cry'],
  ['sway', 'flutter', 'twoVoiced', 'buzz'],
  ['stairs', 'chirps', 'rattle', 'bouncing'],
  ['free', 'crickets', 'squeal', 'whine', 'beeps', 'wire', 'bell'],
];

/** Scores these tones by a fit to others. */
function scoreBy(
  fit: ReturnType<typeof fitInTwoSteps>,
  recordings: readonly JudgedRecording[],
  scores: Scores,
  isAsked: (tone: LabelledTone) => boolean = () => true,
): void {
  const score = createScore(fit.together);
  const wholeScore = createScore(fit.whole);
  for (const { tones } of recordings) {
    tellAlone(tones, fit.alone);
    const all = tones.map(({ candidate }) => candidate);
    const likeliest = likeliestReadings(all);
    for (const tone of tones.filter(isAsked)) {
      const figures = blastFigures(tone.candidate, all, likeliest, null);
      scores.set(tone, { logOdds: score(figures), wholeLogOdds: wholeScore(figures) });
    }
  }
}

/** The tones of a recording that are chosen, no two of them readings of one sound. */
function chosenTones({ tones }: JudgedRecording, scores: Scores) {
  const judged = tones.map((tone) => ({ ...tone.candidate, tone, ...(scores.get(tone) ?? UNJUDGED) }));
  return surestReadings(judged, [], LIMITS[0]!);
}

function rows(title: string, recordings: readonly JudgedRecording[], scores: Scores): string[] {
  const names = [...new Set(recordings.map(({ set, condition }) => `${set} ${condition}`))];
  return names.flatMap((name) => {
    const group = recordings.filter(({ set, condition }) => `${set} ${condition}` === name);
    const asked = group.reduce((sum, one) => sum + one.asked, 0);
    const hours = group.reduce((sum, one) => sum + one.lastsS, 0) / 3600;
    const chosen = group.flatMap((one) => chosenTones(one, scores));
    const cells = LIMITS.map((limit) => {
      const heard = chosen.filter(({ logOdds }) => logOdds > limit);
      const found = heard.filter(({ tone }) => FOUND.includes(tone.label)).length;
      const stray = heard.filter(({ tone }) => tone.label === 'none').length;
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
    const others = recordings.filter((one, k) => !isOut(one, k));
    scoreBy(fitInTwoSteps(others, `fold ${fold}`), recordings.filter(isOut), scores);
  }
  return scores;
}

/**
 * The worst that is said of each tone of a family by numbers that were fitted to no tone during which that family sounded; where several
 * sounded, by the worst of these.
 */
function scoredByFamily(recordings: readonly JudgedRecording[]): Scores {
  const worst: Scores = new Map();
  for (const family of FAMILIES) {
    const isOf = ({ label, kinds }: LabelledTone) =>
      label === 'none' && kinds.some((kind) => family.includes(kind));
    const now: Scores = new Map();
    const fit = fitInTwoSteps(recordings, `without ${family[0]}`, (tone) => !isOf(tone));
    scoreBy(fit, recordings, now, isOf);
    for (const [tone, score] of now)
      if (score.logOdds > (worst.get(tone) ?? UNJUDGED).logOdds) worst.set(tone, score);
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
