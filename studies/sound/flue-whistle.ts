import type { Dice } from '../careers/dice.ts';
import { type Ball, ballNearMouth, drawBall } from './ball-in-chamber.ts';
import { breathOf, drawMouth, type Mouth } from './breath.ts';
import { biquad, filtered } from './filters.ts';
import { stepsASample, thinned } from './fine-rate.ts';
import { type Flue, jetDriven, madeFor, triedOut } from './jet-drive.ts';
import { addAt, wander } from './noise.ts';

/** Whistles whose air is reckoned: a plain chamber, one with a pea, two chambers side by side, and fingers with the mouth's hollow behind them. */
export type FlueKind = 'flue' | 'ballFlue' | 'twinFlue' | 'handFlue';

/** How the hollow behind the fingers moves, as shares of the pitch that it costs. */
interface Hollow {
  beginsLow: number;
  settlesS: number;
  sways: number;
  glides: number;
}

/** One such whistle in the mouth of one handler: the chambers, and what is in them. */
export interface FlueVoice {
  kind: FlueKind;
  pitchHz: number;
  chambers: readonly { flue: Flue; gain: number }[];
  mouth: Mouth;
  ball: Ball | null;
  hollow: Hollow | null;
}

/** A jet is followed at least this often a second: its delay is half a period, nine steps of a whistle of 5 kHz. */
const JET_FROM_HZ = 88_000;
/** The rate at which a whistle is tried when it is made. */
const WORKSHOP_HZ = 96_000;

function drawChamber(kind: FlueKind, pitchHz: number, loud: number, dice: Dice) {
  const isHand = kind === 'handFlue';
  // A tone that a pea cuts off must come again before the next turn, so such a chamber rings short and its jet grows much.
  const isBall = kind === 'ballFlue';
  const q = isHand ? dice.between(7, 14) : dice.between(isBall ? 10 : 14, isBall ? 25 : 40);
  const second = { ratio: dice.between(2.3, 3.3), q: 0.7 * q, share: dice.between(0.03, 0.2) };
  const drawn: Flue = {
    resonanceHz: pitchHz,
    modes: [{ ratio: 1, q, share: 1 }, ...(isHand ? [] : [second])],
    crossPeriods: dice.between(0.42, 0.56),
    grows: dice.between(isBall ? 4 : 2.7, 6),
    aside: dice.between(-0.6, 0.6),
    turbulent: dice.between(0.02, isHand ? 0.35 : 0.16),
    bare: dice.between(0.01, 0.25),
    hiss: 10 ** dice.between(-2, isHand ? -0.4 : -0.7),
  };
  const flue = madeFor(pitchHz, drawn, WORKSHOP_HZ, dice);
  return { flue, gain: loud / triedOut(flue, WORKSHOP_HZ, dice).height };
}

/** A whistle and its handler drawn; spans are our judgement, 2026, as no measured figures were found. */
export function drawFlue(kind: FlueKind, pitchHz: number, dice: Dice): FlueVoice {
  const chambers = [drawChamber(kind, pitchHz, 1, dice)];
  if (kind === 'twinFlue') {
    const ratio = dice.between(1.04, 1.24) ** (dice.chance(0.5) ? 1 : -1);
    chambers.push(drawChamber(kind, ratio * pitchHz, dice.between(0.4, 1), dice));
  }
  const hollow = {
    beginsLow: dice.between(0.02, 0.22),
    settlesS: dice.between(0.015, 0.07),
    sways: dice.between(0.002, 0.015),
    glides: dice.between(-0.05, 0.05),
  };
  return {
    kind,
    pitchHz,
    chambers,
    mouth: drawMouth(dice),
    ball: kind === 'ballFlue' ? drawBall(dice) : null,
    hollow: kind === 'handFlue' ? hollow : null,
  };
}

/** The pitch of a Helmholtz resonator goes with the root of its opening over its volume: 1 in the middle of the blast. */
function hollowBend(
  { beginsLow, settlesS, sways, glides }: Hollow,
  steps: number,
  rateHz: number,
  dice: Dice,
) {
  const sway = wander(steps, 0.15, rateHz, dice);
  return Float64Array.from({ length: steps }, (_, i) => {
    const larger = beginsLow * Math.exp(-i / (settlesS * rateHz)) + glides * (i / steps - 0.5);
    return 1 / Math.sqrt(1 + 2 * larger + 2 * sways * sway[i]!);
  });
}

/**
 * One blast, about unit amplitude, of about `durationS`. `leadS` is where the swing of the air, all chambers together, first passes half of its
 * middle height, `lastsS` from there to where it last does: read from the swing and not from a plan, so a blast that runs out of breath is
 * over when its tone is.
 */
export function blowFlue(voice: FlueVoice, durationS: number, sampleRateHz: number, dice: Dice) {
  const aSample = stepsASample(sampleRateHz, JET_FROM_HZ);
  const rateHz = aSample * sampleRateHz;
  const breath = breathOf(voice.mouth, durationS, rateHz, dice);
  const steps = breath.length;
  const near = voice.ball === null ? null : ballNearMouth(voice.ball, breath, rateHz, dice);
  const moved = voice.hollow === null ? null : hollowBend(voice.hollow, steps, rateHz, dice);
  const { shuts, lowers } = voice.ball ?? { shuts: 0, lowers: 0 };
  const blowing = {
    steps,
    pressure: (i: number) => breath[i]!,
    bend: (i: number) => (moved?.[i] ?? 1) * Math.sqrt(1 - 2 * lowers * (near?.[i] ?? 0)),
    open: (i: number) => 1 - shuts * (near?.[i] ?? 0),
  };
  const fine = new Float64Array(steps);
  const power = new Float64Array(steps);
  for (const { flue, gain } of voice.chambers) {
    const { sound, height } = jetDriven(flue, blowing, rateHz, dice);
    addAt(fine, sound, 0, gain);
    for (let i = 0; i < steps; i++) power[i] = power[i]! + (gain * height[i]!) ** 2;
  }
  // What blows steadily through is wind and no sound.
  filtered(fine, biquad('highpass', 0.25 * voice.pitchHz, Math.SQRT1_2, rateHz));
  const middle = power
    .slice(Math.round(0.2 * durationS * rateHz), Math.round(0.9 * durationS * rateHz))
    .sort();
  // Half of the height is a quarter of the power.
  const quarter = 0.25 * middle[middle.length >> 1]!;
  const first = power.findIndex((one) => one >= quarter);
  const last = power.findLastIndex((one) => one >= quarter);
  return {
    sound: thinned(fine, aSample),
    leadS: first / rateHz,
    lastsS: (last - first) / rateHz,
  };
}
