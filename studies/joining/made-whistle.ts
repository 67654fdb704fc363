import type { Dice } from '../careers/dice.ts';
import type { BlastSeen } from './joiner.ts';

/** A blast that was blown, in true seconds; `of` is the leg it was blown for, `null` where it was for none. */
export interface TrueBlast extends BlastSeen {
  readonly of: string | null;
}

/** Blasts lie this far about the pitch of their whistle (one standard deviation, a share). */
const PITCH_SPREAD = 0.012;

/** The blasts of one stop (long, again where it went badly) or of one recall (a run of pips, now and then two runs). */
export function blastsOf(
  skill: 'stop' | 'recall',
  grade: 'good' | 'fair' | 'missed',
  pitchHz: number,
  atS: number,
  dice: Dice,
): TrueBlast[] {
  const blown = (startS: number, lastsS: number): TrueBlast => ({
    startS,
    endS: startS + lastsS,
    kind: lastsS >= 0.35 ? 'long' : 'pip',
    pitchHz: pitchHz * (1 + PITCH_SPREAD * dice.normal()),
    of: null,
  });
  const all: TrueBlast[] = [];
  let startS = atS;
  if (skill === 'stop') {
    const times = grade === 'good' ? 1 : grade === 'fair' ? 1 + dice.below(2) : 1 + dice.below(3);
    for (let n = 0; n < times; n++) {
      all.push(blown(startS, dice.chance(0.95) ? dice.between(0.38, 1.1) : dice.between(0.25, 0.35)));
      startS = (all.at(-1)?.endS ?? startS) + dice.between(1, 3.5);
    }
    return all;
  }
  const runs = grade === 'good' ? 1 : 1 + dice.below(2);
  for (let run = 0; run < runs; run++) {
    const pips = 2 + dice.below(4);
    for (let n = 0; n < pips; n++) {
      all.push(blown(startS, dice.between(0.1, 0.22)));
      startS = (all.at(-1)?.endS ?? startS) + dice.between(0.08, 0.3);
    }
    startS += dice.between(1.5, 4);
  }
  return all;
}

/** What an ear makes of a blast: now and then nothing, or the other kind; `null` where it is lost. */
export function heardBy(lost: number, blast: TrueBlast, dice: Dice): BlastSeen | null {
  if (dice.chance(lost)) return null;
  const { startS, endS, kind, pitchHz } = blast;
  const isOther = dice.chance(0.03);
  return {
    startS: startS + 0.005 * dice.normal(),
    endS: endS + 0.01 * dice.normal(),
    kind: isOther ? (kind === 'long' ? 'pip' : 'long') : kind,
    pitchHz: pitchHz * (1 + 0.002 * dice.normal()),
  };
}
