import type { Dialect } from './dialect.ts';
import { figure, listed } from './figures.ts';

/** What lengths are shown in. The record itself is always metres. */
export type Units = 'metres' | 'yards';

/** Metres in one yard, exact by the international agreement of 1959. */
export const METRES_PER_YARD = 0.9144;

/** The words and figures that differ between the dialects and units; every sentence is made with one of these. */
export interface Tongue {
  readonly dialect: Dialect;
  readonly units: Units;
  readonly dummy: string;
  readonly dummies: string;
  /** Metres in one shown unit of length. */
  readonly unitM: number;
  /** A length with its short unit: "18 m", "20 yd". Whole above 3, one decimal below. */
  length(lengthM: number): string;
  /** A length with its unit written out: "18 metres", "20 yards". */
  lengthInWords(lengthM: number): string;
  /** A length without its unit, for a ruler. */
  bareLength(lengthM: number): string;
  number(value: number, decimals?: number): string;
  /** Wind speed: metres a second, or miles an hour where lengths are yards. */
  wind(speedMPerS: number): string;
  /** The unit in which wind is shown, for a field to be typed in. */
  readonly windUnit: { readonly name: string; readonly mPerS: number };
  /** "1 leg", "7 legs". */
  count(n: number, one: string, many: string): string;
  /** "a, b and c". */
  list(items: readonly string[]): string;
}

/** Miles an hour in one metre a second: 3600 / 1609.344, exact by the same agreement. */
const MPH_PER_M_PER_S = 3600 / 1609.344;

const wholeAbove = (value: number): number => (Math.abs(value) < 3 ? 1 : 0);

/** Makes the tongue of a dialect and a unit of length. Pure. */
export function tongue(dialect: Dialect, units: Units): Tongue {
  const inYards = units === 'yards';
  const unitM = inYards ? METRES_PER_YARD : 1;
  const metre = dialect === 'en-US' ? 'meter' : 'metre';
  const bareLength = (lengthM: number): string => {
    const shown = finite('lengthM', lengthM) / unitM;
    return figure(shown, wholeAbove(shown));
  };
  return {
    dialect,
    units,
    dummy: dialect === 'en-US' ? 'bumper' : 'dummy',
    dummies: dialect === 'en-US' ? 'bumpers' : 'dummies',
    unitM,
    windUnit: inYards ? { name: 'mph', mPerS: 1 / MPH_PER_M_PER_S } : { name: 'm/s', mPerS: 1 },
    bareLength,
    length: (lengthM) => `${bareLength(lengthM)} ${inYards ? 'yd' : 'm'}`,
    lengthInWords: (lengthM) => {
      const shown = bareLength(lengthM);
      return `${shown} ${inYards ? 'yard' : metre}${shown === '1' ? '' : 's'}`;
    },
    number: (value, decimals = 0) => figure(finite('value', value), decimals),
    wind: (speedMPerS) => {
      const speed = finite('speedMPerS', speedMPerS);
      return inYards ? `${figure(speed * MPH_PER_M_PER_S, 0)} mph` : `${figure(speed, 0)} m/s`;
    },
    count: (n, one, many) => `${figure(finite('n', n), 0)} ${n === 1 ? one : many}`,
    list: (items) => listed(items, dialect),
  };
}

function finite(name: string, value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`${name}: expected a finite number, got ${value}`);
  return value;
}
