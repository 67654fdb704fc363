import type { Carrying, WhistleSound } from './carrying.ts';
import { allowedPerDayS, NOISE_LIMITS } from './hearing-dose.ts';
import type { StopPoint } from './stop-point.ts';

/** What to mind of a stop, with its figures and where it comes from (a key of the bibliography, or common practice). */
export type WhistleCaution =
  | { readonly code: 'too-late'; readonly source: string; readonly haltsAtM: number }
  | { readonly code: 'decide-before-send'; readonly source: string; readonly beforeS: number }
  | { readonly code: 'not-heard'; readonly source: string; readonly missingDb: number }
  | { readonly code: 'thin-margin'; readonly source: string; readonly marginDb: number }
  | { readonly code: 'wind'; readonly source: string; readonly windMPerS: number }
  | {
      readonly code: 'ears';
      readonly source: string;
      readonly levelDb: number;
      readonly limitDb: number;
      readonly allowedS: number;
    };

/** A dog that runs, or hunts with its nose down, needs more than it can just make out (our judgement, 2026). */
const THIN_DB = 10;
/** From here wind bends sound enough to matter: up against it and over the dog, down with it (our judgement, 2026). */
const WINDY_M_PER_S = 2;

/**
 * What to mind of a stop that was worked out: the weightiest first. Wind gets a word and no figure, since what it does to a whistle
 * depends on how it grows with height; the dose is that of people (NIOSH1998), and there is none for dogs.
 */
export function whistleCautions(
  stop: StopPoint,
  carrying: Carrying,
  sound: WhistleSound,
  windMPerS: number,
): WhistleCaution[] {
  const { marginDb, carries } = carrying;
  const cautions: (WhistleCaution | false)[] = [
    stop.isTooLate && { code: 'too-late', source: 'common practice', haltsAtM: stop.dogHaltsAtM },
    !stop.isTooLate &&
      stop.decideBeforeSendS > 0 && {
        code: 'decide-before-send',
        source: 'Kosinski2008',
        beforeS: stop.decideBeforeSendS,
      },
    !carries && { code: 'not-heard', source: 'Heffner1983', missingDb: -marginDb },
    carries && marginDb < THIN_DB && { code: 'thin-margin', source: 'Heffner1983', marginDb },
    windMPerS >= WINDY_M_PER_S && { code: 'wind', source: 'ISO9613-2', windMPerS },
    sound.levelDbSpl > NOISE_LIMITS.nioshDb && {
      code: 'ears',
      source: 'NIOSH1998',
      levelDb: sound.levelDbSpl,
      limitDb: NOISE_LIMITS.nioshDb,
      allowedS: allowedPerDayS(sound.levelDbSpl),
    },
  ];
  return cautions.filter((one) => one !== false);
}
