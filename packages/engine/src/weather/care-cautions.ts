import { type CareLevel, coldLevel, heatLevel, type KnownWeather } from './care-level.ts';
import { CARE_JUDGED, CARE_LIMITS } from './care-limits.ts';

/** Whose word goes before ours. */
export type DefersTo = 'vet' | 'landowner' | 'rules';

/** Every caution: whose word goes first, and where it comes from (a key of the bibliography, or common practice). */
const KINDS = {
  'heat-stop': ['vet', 'Hall2020b'],
  'heat-short': ['vet', 'Matwichuk1999'],
  'heat-care': ['vet', 'Hall2020b'],
  'heat-signs': ['vet', 'Hall2021'],
  'heat-after-work': ['vet', 'Baker2020'],
  'cool-first': ['vet', 'Hanel2016'],
  'mild-days-too': ['vet', 'Hall2022'],
  'in-the-sun': ['vet', 'Rothfusz1990'],
  cold: ['vet', 'common practice'],
  'cold-water': ['vet', 'common practice'],
  puppy: ['vet', 'common practice'],
  'young-joints': ['vet', 'common practice'],
  'old-dog': ['vet', 'common practice'],
  'age-not-known': ['vet', 'common practice'],
  'load-minutes': ['vet', 'common practice'],
  'load-jumps': ['vet', 'common practice'],
  water: ['landowner', 'common practice'],
  'whistle-at-the-ear': ['rules', 'NIOSH1998'],
  thrown: ['rules', 'common practice'],
  launched: ['rules', 'common practice'],
  livestock: ['landowner', 'common practice'],
  roads: ['rules', 'common practice'],
  law: ['rules', 'common practice'],
} as const satisfies Record<string, readonly [DefersTo, string]>;

export type CareCode = keyof typeof KINDS;
export const CARE_CODES = Object.keys(KINDS) as readonly CareCode[];

/** One thing to mind, with the figure it hangs on and the limit it is held against, where it has them. */
export interface CareCaution {
  readonly code: CareCode;
  readonly defersTo: DefersTo;
  readonly source: string;
  readonly is?: number;
  readonly limit?: number;
  /** At most so many reps, so many minutes, so long a way. */
  readonly reps?: number;
  readonly minutes?: number;
  readonly lineM?: number;
}

/** The day, the dog and its week, as far as they are known. */
export interface CareInput extends KnownWeather {
  readonly ageMonths?: number | undefined;
  readonly minutesThisWeek?: number | undefined;
  readonly jumpsThisWeek?: number | undefined;
  readonly waterC?: number | undefined;
}

type Figures = Omit<CareCaution, 'code' | 'defersTo' | 'source' | 'is'> & {
  readonly is?: number | undefined;
};

function caution(code: CareCode, when: boolean, { is, ...figures }: Figures = {}): CareCaution[] {
  if (!when) return [];
  const [defersTo, source] = KINDS[code];
  return [{ code, defersTo, source, ...(is === undefined ? {} : { is }), ...figures }];
}

/**
 * What to mind of a day's work, the weightiest first: heat, cold, the dog's age and load, then what holds on every day. All figures are
 * cautious and none is a safe limit.
 */
export function careCautions(input: CareInput): CareCaution[] {
  return [...ofHeat(input), ...ofCold(input), ...ofAge(input), ...ofLoad(input), ...ofEveryDay()];
}

function ofHeat(input: CareInput): CareCaution[] {
  const { airC, sun } = input;
  const level: CareLevel = heatLevel(input);
  const isWarm = level !== 'fine';
  const mild = CARE_JUDGED.mildC;
  return [
    ...caution('heat-stop', level === 'stop', { is: airC }),
    ...caution('heat-short', level === 'short', {
      is: airC,
      reps: CARE_LIMITS.hotReps,
      minutes: CARE_LIMITS.hotMinutes,
    }),
    ...caution('heat-care', level === 'care', { is: airC }),
    ...caution('in-the-sun', isWarm && (sun ?? 0) >= 0.5, { limit: CARE_JUDGED.sunAddsC }),
    ...caution('heat-signs', isWarm),
    ...caution('cool-first', level === 'short' || level === 'stop'),
    ...caution('heat-after-work', isWarm),
    ...caution('mild-days-too', !isWarm && (airC ?? 0) >= mild - 5, { is: airC, limit: mild }),
  ];
}

function ofCold(input: CareInput): CareCaution[] {
  const { airC, waterC } = input;
  const water = CARE_JUDGED.coldWaterC;
  return [
    ...caution('cold', coldLevel(input) !== 'fine', { is: airC }),
    ...caution('cold-water', waterC !== undefined && waterC <= water, { is: waterC, limit: water }),
  ];
}

function ofAge({ ageMonths }: CareInput): CareCaution[] {
  const { grownMonths, puppyMonths, puppyMinutes, youngLineM } = CARE_LIMITS;
  const months = ageMonths ?? Number.NaN;
  return [
    ...caution('puppy', months < puppyMonths, { is: ageMonths, limit: puppyMonths, minutes: puppyMinutes }),
    ...caution('young-joints', months < grownMonths, {
      is: ageMonths,
      limit: grownMonths,
      lineM: youngLineM,
    }),
    ...caution('old-dog', months >= CARE_JUDGED.oldMonths, { is: ageMonths, limit: CARE_JUDGED.oldMonths }),
    ...caution('age-not-known', ageMonths === undefined),
  ];
}

function ofLoad({ minutesThisWeek, jumpsThisWeek }: CareInput): CareCaution[] {
  const { weekMinutes, weekJumps } = CARE_JUDGED;
  return [
    ...caution('load-minutes', (minutesThisWeek ?? 0) > weekMinutes, {
      is: minutesThisWeek,
      limit: weekMinutes,
    }),
    ...caution('load-jumps', (jumpsThisWeek ?? 0) > weekJumps, { is: jumpsThisWeek, limit: weekJumps }),
  ];
}

function ofEveryDay(): CareCaution[] {
  const always = ['water', 'whistle-at-the-ear', 'thrown', 'launched', 'livestock', 'roads', 'law'] as const;
  return always.flatMap((code) => caution(code, true));
}
