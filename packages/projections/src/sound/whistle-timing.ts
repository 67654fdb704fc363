import { distanceAtM, type StopConditions } from '@sedgeline/engine/whistle';
import type { FilmRecord } from '../film/film-record.ts';
import type { LegRecord } from '../record/training-record.ts';

/** What a joined stop whistle says of its leg, where a film's marks say when the dog was sent or halted. */
export interface WhistleTiming {
  readonly leg: number;
  /** From whistle to the marked halt, seconds. */
  readonly latencyS: number | null;
  /** Where the dog was when the whistle blew, metres from the send, by its own run speed. */
  readonly blewAtM: number | null;
  /** Where it was to be blown: what was planned, else what was asked. */
  readonly plannedAtM: number | null;
}

/** The journal's own limit on a latency. */
const LONGEST_LATENCY_S = 60;
/** Run speeds scatter by 8 % and a mark by a frame or two: less than this share, or this far, is as planned (our judgement, 2026). */
const AS_PLANNED = { share: 0.15, m: 3 } as const;
const PER_S = 100;

/**
 * Times a stop by a whistle that was heard at `atS` of a sound and the marks of the film that sound belongs to: latency from the
 * whistle to the rep's first halt after it; the dog's place at the whistle from its send, by the run of `stopConditionsOfDog`.
 */
export function whistleTiming(
  { rep, leg, atS }: { readonly rep: string; readonly leg: number; readonly atS: number },
  record: LegRecord,
  { marks }: Pick<FilmRecord, 'marks'>,
  at: StopConditions,
): WhistleTiming {
  const own = marks.filter((mark) => mark.rep === rep);
  const halt = own.find(({ what, atS: haltS }) => what === 'halt' && haltS >= atS);
  const sent = own.findLast(({ what, atS: sentS }) => what === 'sent' && sentS <= atS);
  const latencyS = halt === undefined ? null : Math.round((halt.atS - atS) * PER_S) / PER_S;
  return {
    leg,
    latencyS: latencyS !== null && latencyS <= LONGEST_LATENCY_S ? latencyS : null,
    blewAtM: sent === undefined ? null : distanceAtM(atS - sent.atS, at),
    plannedAtM: record.planned?.distanceM ?? record.ask.distanceM ?? null,
  };
}

/** How much later (or, below 0, earlier) than planned it was blown, metres; 0 within what running and marking leave open; `null` where it can't be said. */
export function blewLaterM({ blewAtM, plannedAtM }: WhistleTiming): number | null {
  if (blewAtM === null || plannedAtM === null) return null;
  const lateM = blewAtM - plannedAtM;
  return Math.abs(lateM) <= Math.max(AS_PLANNED.m, AS_PLANNED.share * plannedAtM) ? 0 : lateM;
}
