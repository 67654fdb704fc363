import { normalDensity } from '../../numeric/index.ts';
import type { OwnWhistle } from '../own-whistle.ts';
import type { SoundCall } from './sound-calls.ts';

/** What a call's pitch weighs, if it was blown for a want and if it was not; both over the same even band. */
export interface PitchWeight {
  readonly wanted: number;
  readonly other: number;
}

/** One whistle's blasts lie about this far apart, as a share (the spread that `learnOwnWhistle` begins with). */
const USUAL_SPREAD = 0.015;
/** Share of the wanted calls that are not of the own whistle after all, and of the others that are of it (our judgement, 2026). */
const WANTED_BUT_ODD = 0.03;
const OTHERS_OWN = 0.4;
const BAND_LOG_WIDTH = Math.log(7200 / 1500);
/** So many pitches are tried where the own one is not known. */
const MOST_PITCHES = 5;
const CLUSTER = 0.04;

/** What the own whistle may be: as it was learned, else each pitch that comes twice or more, and none that is known. */
export function pitchesToTry(
  calls: readonly SoundCall[],
  own: OwnWhistle | null,
): readonly (OwnWhistle | null)[] {
  if (own !== null) return [own];
  const left = calls.filter(({ kind }) => kind !== 'click').map(({ pitchHz }) => pitchHz);
  left.sort((a, b) => a - b);
  const clusters: number[][] = [];
  for (const hz of left) {
    const last = clusters.at(-1);
    if (last !== undefined && hz / last[0]! < 1 + CLUSTER) last.push(hz);
    else clusters.push([hz]);
  }
  const usual = clusters.filter(({ length }) => length > 1).sort((a, b) => b.length - a.length);
  return [
    null,
    ...usual
      .slice(0, MOST_PITCHES)
      .map((all) => ({ pitchHz: all[Math.floor(all.length / 2)]!, spread: USUAL_SPREAD })),
  ];
}

/** What a call's pitch says, if the own whistle is this one; nothing of a click, and nothing where none is known. */
export function pitchWeight(own: OwnWhistle | null, { kind, pitchHz }: SoundCall): PitchWeight {
  if (own === null || kind === 'click') return { wanted: 1, other: 1 };
  const away = Math.log(pitchHz / own.pitchHz) / own.spread;
  const near = (normalDensity(away) / own.spread) * BAND_LOG_WIDTH;
  return {
    wanted: WANTED_BUT_ODD + (1 - WANTED_BUT_ODD) * near,
    other: 1 - OTHERS_OWN + OTHERS_OWN * near,
  };
}
