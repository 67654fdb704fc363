/** Which English: British is the default; American says "bumper" and spells its own way. */
export type Dialect = 'en-GB' | 'en-US';
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
  /** "1 leg", "7 legs". */
  count(n: number, one: string, many: string): string;
  /** "a, b and c". */
  list(items: readonly string[]): string;
}

/** Miles an hour in one metre a second: 3600 / 1609.344, exact by the same agreement. */
const MPH_PER_M_PER_S = 3600 / 1609.344;

const wholeAbove = (value: number): number => (Math.abs(value) < 3 ? 1 : 0);

/** Makes the tongue of a dialect and a unit of length. Pure; formatters come from `Intl`. */
export function tongue(dialect: Dialect, units: Units): Tongue {
  const unitM = units === 'yards' ? METRES_PER_YARD : 1;
  const unit = units === 'yards' ? 'yard' : 'meter';
  const formats = new Map<string, Intl.NumberFormat>();
  const format = (value: number, decimals: number, options: Intl.NumberFormatOptions): string => {
    const key = `${decimals} ${options.unit} ${options.unitDisplay}`;
    let made = formats.get(key);
    if (!made) {
      made = new Intl.NumberFormat(dialect, { maximumFractionDigits: decimals, ...options });
      formats.set(key, made);
    }
    return made.format(tidy(value, decimals));
  };
  const shown = (lengthM: number): number => finite('lengthM', lengthM) / unitM;
  // Made when first needed: the browser loads its language data then, some ten milliseconds on a phone.
  let listing: Intl.ListFormat | undefined;
  return {
    dialect,
    units,
    dummy: dialect === 'en-US' ? 'bumper' : 'dummy',
    dummies: dialect === 'en-US' ? 'bumpers' : 'dummies',
    unitM,
    length: (lengthM) =>
      format(shown(lengthM), wholeAbove(shown(lengthM)), { style: 'unit', unit, unitDisplay: 'short' }),
    lengthInWords: (lengthM) =>
      format(shown(lengthM), wholeAbove(shown(lengthM)), { style: 'unit', unit, unitDisplay: 'long' }),
    bareLength: (lengthM) => format(shown(lengthM), wholeAbove(shown(lengthM)), {}),
    number: (value, decimals = 0) => format(finite('value', value), decimals, {}),
    wind: (speedMPerS) =>
      units === 'yards'
        ? format(finite('speedMPerS', speedMPerS) * MPH_PER_M_PER_S, 0, {
            style: 'unit',
            unit: 'mile-per-hour',
          })
        : format(finite('speedMPerS', speedMPerS), 0, { style: 'unit', unit: 'meter-per-second' }),
    count: (n, one, many) => `${format(finite('n', n), 0, {})} ${n === 1 ? one : many}`,
    list: (items) => {
      listing ??= new Intl.ListFormat(dialect, { type: 'conjunction' });
      return listing.format(items);
    },
  };
}

/** Rounds first, so that -0.2 never prints as "-0". */
function tidy(value: number, decimals: number): number {
  const ten = 10 ** decimals;
  return Math.round(value * ten) / ten + 0;
}

function finite(name: string, value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`${name}: expected a finite number, got ${value}`);
  return value;
}
