import type { HeardBlast, HeardClick } from '../listener.ts';

/** What a call is: a long blast, one pip alone, a run of pips, a click. */
export type CallKind = 'long' | 'pip' | 'pips' | 'click';

/** Blasts that were blown as one: a long one or a run of pips, each with its repeats. A click is a call of its own. */
export interface SoundCall {
  readonly kind: CallKind;
  /** Start of the first blast and end of the last, seconds from the beginning of the sound. */
  readonly startS: number;
  readonly endS: number;
  /** Middle of the pitches; 0 of a click. */
  readonly pitchHz: number;
  /** How many blasts or clicks it is made of. */
  readonly count: number;
}

/** A second whistle comes within this of the first one's end, and so does a second run of pips (common practice, no source). */
const AGAIN_WITHIN_S = 4;
/** One whistle keeps its pitch within this share (our judgement, 2026). */
const SAME_PITCH = 0.05;

type Blast = Pick<HeardBlast, 'startS' | 'endS' | 'kind' | 'pitchHz'>;

/**
 * Calls of a sound, by the time of their start: long blasts of one pitch that follow each other within 4 s are one call, and so
 * are pips. Takes the blasts and clicks in any order.
 */
export function soundCalls(
  whistles: readonly Blast[],
  clicks: readonly Pick<HeardClick, 'timeS'>[] = [],
): readonly SoundCall[] {
  const inOrder = whistles.toSorted((a, b) => a.startS - b.startS);
  const groups: Blast[][] = [];
  for (const blast of inOrder) {
    const group = groups.findLast((one) => goesOn(one.at(-1), blast));
    if (group === undefined) groups.push([blast]);
    else group.push(blast);
  }
  const blown = groups.map((group): SoundCall => {
    const first = group[0]!;
    const pitches = group.map(({ pitchHz }) => pitchHz).sort((a, b) => a - b);
    const isLong = first.kind === 'long';
    return {
      kind: isLong ? 'long' : group.length === 1 ? 'pip' : 'pips',
      startS: first.startS,
      endS: group.at(-1)!.endS,
      pitchHz: pitches[Math.floor(pitches.length / 2)]!,
      count: group.length,
    };
  });
  const pressed = clicks.map(
    ({ timeS }): SoundCall => ({ kind: 'click', startS: timeS, endS: timeS, pitchHz: 0, count: 1 }),
  );
  return [...blown, ...pressed].sort((a, b) => a.startS - b.startS);
}

function goesOn(last: Blast | undefined, next: Blast): boolean {
  if (last === undefined || last.kind !== next.kind) return false;
  if (Math.abs(next.pitchHz / last.pitchHz - 1) > SAME_PITCH) return false;
  return next.startS - last.endS <= AGAIN_WITHIN_S;
}
