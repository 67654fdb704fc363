import { apparentTemperatureC } from './apparent-temperature.ts';
import { CARE_JUDGED, CARE_LIMITS } from './care-limits.ts';
import { heatIndexC } from './heat-index.ts';

/** How much work the weather leaves: as usual, with care, little, or none. */
export const CARE_LEVELS = ['fine', 'care', 'short', 'stop'] as const;
export type CareLevel = (typeof CARE_LEVELS)[number];

/** The weather as far as it is known. */
export interface KnownWeather {
  readonly airC?: number | undefined;
  readonly humidityPct?: number | undefined;
  readonly windMPerS?: number | undefined;
  /** 0 shade or night, 1 full sun. */
  readonly sun?: number | undefined;
}

const worse = (a: CareLevel, b: CareLevel): CareLevel =>
  CARE_LEVELS.indexOf(a) > CARE_LEVELS.indexOf(b) ? a : b;

/** By air and humidity alone: the contract's rule, and ours above it. Humidity that is not known is not close. */
function levelOfAir(airC: number, humidityPct: number): CareLevel {
  const { tooHotC, tooCloseC, tooCloseHumidityPct, warmC } = CARE_JUDGED;
  if (airC >= tooHotC || (airC >= tooCloseC && humidityPct >= tooCloseHumidityPct)) return 'stop';
  if (isHot({ airC, humidityPct })) return 'short';
  return airC >= warmC ? 'care' : 'fine';
}

/** By the heat index, raised by the sun where that is told. In shade it only adds a stop: the contract's rule has the rest. */
function levelOfIndex(airC: number, humidityPct: number, sun: number | undefined): CareLevel {
  const { indexCareC, indexShortC, indexStopC, sunAddsC } = CARE_JUDGED;
  const feltC = heatIndexC(airC, humidityPct) + sunAddsC * (sun ?? 0);
  if (feltC >= indexStopC) return 'stop';
  if (sun !== undefined && feltC >= indexShortC) return 'short';
  return feltC >= indexCareC ? 'care' : 'fine';
}

/**
 * What heat leaves of a session. Thresholds are common practice and human steps: none is validated for dogs, which were ill on mild
 * days too (Hall2022). Not known is fine.
 */
export function heatLevel({ airC, humidityPct, sun }: KnownWeather): CareLevel {
  if (airC === undefined) return 'fine';
  const byAir = levelOfAir(airC, humidityPct ?? 0);
  return humidityPct === undefined ? byAir : worse(byAir, levelOfIndex(airC, humidityPct, sun));
}

/** What cold and wind leave of it: never a stop, since a dry dog that moves keeps warm (common practice, no source). */
export function coldLevel({ airC, humidityPct, windMPerS }: KnownWeather): CareLevel {
  if (airC === undefined || airC > 10) return 'fine';
  const feltC = apparentTemperatureC(airC, humidityPct ?? 70, windMPerS ?? 0);
  if (feltC <= CARE_JUDGED.veryColdC) return 'short';
  return feltC <= CARE_JUDGED.coldC ? 'care' : 'fine';
}

/** The worse of heat and cold. */
export function careLevel(weather: KnownWeather): CareLevel {
  return worse(heatLevel(weather), coldLevel(weather));
}

/** The heat of the day as it bounds a plan. */
export type Heat = 'fine' | 'short' | 'none';

/** The heat as a plan takes it: `none` where no session should be, `short` where reps and minutes are bounded. */
export function heatOf(weather: KnownWeather | undefined): Heat {
  const level = heatLevel(weather ?? {});
  if (level === 'stop') return 'none';
  return level === 'short' ? 'short' : 'fine';
}

/** Hot by the contract's rule alone, which every plan is held to; not known is not hot. */
export function isHot({ airC, humidityPct }: KnownWeather): boolean {
  const { hotC, closeC, closeHumidityPct } = CARE_LIMITS;
  const air = airC ?? -Infinity;
  return air >= hotC || (air >= closeC && (humidityPct ?? 0) >= closeHumidityPct);
}
