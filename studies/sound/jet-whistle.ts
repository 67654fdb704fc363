import type { Dice } from '../careers/dice.ts';
import { bandNoise, fromDb, wander } from './noise.ts';
import { selfSounding, swingSound } from './self-sounding.ts';

/** Whistles whose tone sets in by itself: a pipe with a lip, one with a cork ball that rolls slowly, two fingers, a pipe that is blown too hard. */
export type JetKind = 'jet' | 'cork' | 'fingers' | 'overblown';

/** One such whistle in the hands of one handler. */
export interface JetVoice {
  kind: JetKind;
  pitchHz: number;
  /** The tongue lets the air go at once, or the breath swells. */
  riseS: number;
  fallS: number;
  /** By how much the pressure grows or sinks along a blast, and trembles. */
  swells: number;
  trembles: number;
  trembleHz: number;
  /** The pitch goes with this power of the pressure. */
  pitchPower: number;
  quickness: number;
  kicks: number;
  breathDb: number;
  second: number;
  corkHz: number;
  corkShut: number;
  /** How low two fingers begin and end, as shares of the pitch. */
  beginsLow: number;
  endsLow: number;
  /** The way of swinging that a pipe cracks into, over its own. */
  crackRatio: number;
}

/** A whistle and its handler drawn: our judgement, 2026, as no measured spectrum was found. */
export const drawJet = (kind: JetKind, pitchHz: number, dice: Dice): JetVoice => ({
  kind,
  pitchHz,
  riseS: dice.chance(0.6) ? dice.between(0.004, 0.02) : dice.between(0.02, 0.08),
  fallS: dice.between(0.01, 0.07),
  swells: dice.between(-0.3, 0.3),
  trembles: dice.chance(0.3) ? dice.between(0.03, 0.15) : 0,
  trembleHz: dice.between(3, 8),
  pitchPower: dice.between(0.03, 0.12),
  quickness: dice.between(250, 900),
  kicks: 10 ** dice.between(-3.5, -2.3),
  breathDb: dice.between(-38, -14),
  second: fromDb(dice.between(-42, -16)),
  corkHz: dice.between(13, 34),
  corkShut: dice.between(0.4, 0.95),
  beginsLow: dice.between(0.03, 0.2),
  endsLow: dice.between(0, 0.15),
  crackRatio: dice.between(1.4, 2.05),
});

/** How far a ball shuts the pipe, 0 to `shut`: it comes round unevenly, and is gone for most of a turn. */
function corkShut({ kind, corkHz, corkShut: shut }: JetVoice, samples: number, rateHz: number, dice: Dice) {
  if (kind !== 'cork') return null;
  const uneven = wander(samples, 0.15, rateHz, dice);
  let turn = dice.uniform();
  return Float64Array.from({ length: samples }, (_, i) => {
    turn += (corkHz * (1 + 0.2 * uneven[i]!)) / rateHz;
    return shut * (0.5 + 0.5 * Math.cos(2 * Math.PI * turn)) ** 2;
  });
}

/** Shares of the samples over which a pipe has cracked: at the begin, and now and then within. */
function cracks({ kind }: JetVoice, lastsS: number, dice: Dice): readonly (readonly [number, number])[] {
  if (kind !== 'overblown') return [];
  const first = dice.chance(0.7) ? [[0, dice.between(0.01, 0.04)] as const] : [];
  const from = dice.between(0.3, 0.8) * lastsS;
  return dice.chance(0.25) && lastsS > 0.4 ? [...first, [from, from + dice.between(0.02, 0.06)]] : first;
}

/**
 * One blast, about unit amplitude, of about `durationS`: pressure drives a tone that sets in by itself, and its breath. `leadS` is where the
 * tone's own height passes half of its middle height, `lastsS` how long it stays above, both read from the swing and not from a plan.
 */
export function blowJet(voice: JetVoice, durationS: number, rateHz: number, dice: Dice) {
  const { riseS, fallS, pitchHz, kind } = voice;
  const blownS = durationS + riseS;
  const samples = Math.round((blownS + fallS + 0.06) * rateHz);
  const phase = dice.between(0, 6);
  const at = (i: number) => i / rateHz;
  const pressure = (s: number): number => {
    const up = Math.min(1, s / riseS);
    const down = Math.max(0, Math.min(1, 1 - (s - blownS) / fallS));
    const along = 1 + voice.swells * (s / blownS - 0.5);
    return up * down * along * (1 + voice.trembles * Math.sin(2 * Math.PI * voice.trembleHz * s + phase));
  };
  const shut = corkShut(voice, samples, rateHz, dice);
  const cracked = cracks(voice, durationS, dice);
  const isCracked = (s: number) => cracked.some(([from, to]) => s >= from && s < to);
  const bend = (s: number): number => {
    if (kind !== 'fingers') return 1;
    return (
      1 - voice.beginsLow * Math.exp(-s / 0.05) - voice.endsLow * Math.exp(-Math.max(0, blownS - s) / 0.04)
    );
  };
  const pitch = (i: number): number =>
    pitchHz *
    bend(at(i)) *
    Math.max(0.05, pressure(at(i))) ** voice.pitchPower *
    (isCracked(at(i)) ? voice.crackRatio : 1) *
    (1 - 0.03 * (shut?.[i] ?? 0));
  const over = (i: number) => 1.25 * pressure(at(i)) - 0.25;
  const { quickness, kicks } = voice;
  const swing = selfSounding({ samples, over, pitchHz: pitch, quickness, kicks }, rateHz, dice);
  const heights = swing.re.map((x, i) => Math.hypot(x, swing.im[i]!));
  const sound = swingSound(swing, pitch, voice.second, rateHz);
  const breath = bandNoise(samples, 0.5 * pitchHz, Math.min(2 * pitchHz, 0.4 * rateHz), rateHz, dice);
  for (let i = 0; i < samples; i++) {
    const blown = fromDb(voice.breathDb) * pressure(at(i)) ** 1.5 * breath[i]!;
    sound[i] = (sound[i]! + blown) * (1 - (shut?.[i] ?? 0));
  }
  const middle = heights
    .slice(Math.round((riseS + 0.2 * durationS) * rateHz), Math.round((riseS + 0.9 * durationS) * rateHz))
    .sort();
  const half = 0.5 * middle[middle.length >> 1]!;
  const first = heights.findIndex((height) => height >= half);
  const last = heights.findLastIndex((height) => height >= half);
  return { sound, leadS: first / rateHz, lastsS: (last - first) / rateHz };
}
