import { finiteBetween } from '../quantity/index.ts';

/** The air that a sound goes through. */
export interface Air {
  readonly airC: number;
  readonly humidityPct: number;
  /** Standard pressure at sea level where left out. */
  readonly pressureKPa?: number | undefined;
}

const REFERENCE_KPA = 101.325;
const REFERENCE_K = 293.15;
const TRIPLE_POINT_K = 273.16;

/**
 * What air takes from a pure tone, decibels a kilometre (ISO9613-1, equations 3 to 5 and annex B): classical absorption, and the
 * relaxation of oxygen at `f_rO` and of nitrogen at `f_rN`, which move with the molar share `h` of water vapour.
 * The standard claims 10 % within -20 to 50 C and 0.05 to 5 % of vapour. Checked on 190 printed values of its table 1 and 47 of
 * ISO9613-2, table 2.
 * @throws RangeError outside 20 Hz to 100 kHz, -60 to 60 C, 0 to 100 %, 50 to 120 kPa
 */
export function airAbsorptionDbPerKm(pitchHz: number, air: Air): number {
  finiteBetween('pitchHz', pitchHz, 20, 100_000);
  const kelvin = finiteBetween('airC', air.airC, -60, 60) + 273.15;
  const humidityPct = finiteBetween('humidityPct', air.humidityPct, 0, 100);
  const p = finiteBetween('pressureKPa', air.pressureKPa ?? REFERENCE_KPA, 50, 120) / REFERENCE_KPA;
  const t = kelvin / REFERENCE_K;
  const h = (humidityPct * 10 ** (-6.8346 * (TRIPLE_POINT_K / kelvin) ** 1.261 + 4.6151)) / p;
  const f2 = pitchHz * pitchHz;
  const oxygenHz = p * (24 + (4.04e4 * h * (0.02 + h)) / (0.391 + h));
  const nitrogenHz = (p / Math.sqrt(t)) * (9 + 280 * h * Math.exp(-4.17 * (t ** (-1 / 3) - 1)));
  const oxygen = (0.01275 * Math.exp(-2239.1 / kelvin)) / (oxygenHz + f2 / oxygenHz);
  const nitrogen = (0.1068 * Math.exp(-3352 / kelvin)) / (nitrogenHz + f2 / nitrogenHz);
  return 8686 * f2 * ((1.84e-11 / p) * Math.sqrt(t) + t ** -2.5 * (oxygen + nitrogen));
}
