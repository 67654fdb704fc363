import { LONGEST_FRAMES } from './ridge-tracker.ts';

/** First and last frame of a stretch, counted from the first of its ridge. */
export type Stretch = readonly [from: number, to: number];

/** What of a followed tone its stretches are read from. */
interface FollowedTone {
  bins: Float64Array;
  heights: Float64Array;
}

/** Silences that one blast may hide, as in moving air or behind a gate that shuts: 0.3 s; and how many of them. */
const GAP_FRAMES = 75;
const MOST_GAPS = 3;
/** A blast goes on at its pitch. */
const SAME_PITCH = 0.04;
/** Two sounds that touch part where the height leaps by half or the pitch by a hundredth, over a fifth of a tenth of a second to each side. */
const STEP_FRAMES = 5;
const HEIGHT_STEP = Math.log(2);
const PITCH_STEP = 0.015;
/** What is left is no shorter than this. */
const LEAST_FRAMES = 12;

function mean(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i]!;
  return sum / Math.max(1, to - from);
}

/** Neighbouring stretches read as one blast that was drowned or shut off for moments. */
function joined({ bins }: FollowedTone, stretches: readonly Stretch[]): Stretch[] {
  const found: Stretch[] = [];
  stretches.forEach(([from, firstTo], i) => {
    const pitch = mean(bins, from, firstTo + 1);
    let to = firstTo;
    for (const [nextFrom, nextTo] of stretches.slice(i + 1, i + 1 + MOST_GAPS)) {
      const away = Math.abs(Math.log(mean(bins, nextFrom, nextTo + 1) / pitch));
      if (nextFrom - to > GAP_FRAMES || away > SAME_PITCH || nextTo - from > LONGEST_FRAMES) break;
      to = nextTo;
      found.push([from, to]);
    }
  });
  return found;
}

/** How far height and pitch leap at a frame, the greater of both, 1 where it is enough to part two sounds; nought below that. */
function leap({ bins, heights }: FollowedTone, at: number): number {
  const [before, after] = [mean(heights, at - STEP_FRAMES, at), mean(heights, at, at + STEP_FRAMES)];
  const pitch = Math.log(mean(bins, at, at + STEP_FRAMES) / mean(bins, at - STEP_FRAMES, at));
  const size = Math.max(
    Math.abs(Math.log((after + 1e-30) / (before + 1e-30))) / HEIGHT_STEP,
    Math.abs(pitch) / PITCH_STEP,
  );
  return size < 1 ? 0 : size;
}

/** A stretch less what is parted from it by its greatest leap: without its beginning, and without its end. */
function trimmed(tone: FollowedTone, [from, to]: Stretch): Stretch[] {
  let [at, greatest] = [-1, 0];
  for (let i = from + STEP_FRAMES; i <= to - STEP_FRAMES; i++) {
    const size = leap(tone, i);
    if (size > greatest) [at, greatest] = [i, size];
  }
  if (at < 0) return [];
  return (
    [
      [at, to],
      [from, at - 1],
    ] as const
  ).filter(([a, b]) => b - a >= LEAST_FRAMES);
}

/**
 * Other ways of reading the stretches of one tone: some as one blast with silences in it, some without what sounded at the same pitch just
 * before or after. Which reading is right is judged with all others (our judgement, 2026).
 */
export const otherReadings = (tone: FollowedTone, stretches: readonly Stretch[]): Stretch[] => [
  ...joined(tone, stretches),
  ...stretches.flatMap((stretch) => trimmed(tone, stretch)),
];
