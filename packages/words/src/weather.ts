import type { Tongue } from './tongue.ts';

/** How much work the weather leaves. */
export type ToldCareLevel = 'fine' | 'care' | 'short' | 'stop';

/** What the air feels like, as far as it is told. */
export interface ToldWeather {
  readonly level: ToldCareLevel;
  readonly heatIndexC: number;
  readonly wetBulbC: number | null;
  readonly wbgtC: number;
  readonly apparentC: number;
}

const LEVELS: Readonly<Record<ToldCareLevel, string>> = {
  fine: 'Fine: work as usual, and watch the dog.',
  care: 'With care: shorter, slower, with water and rest.',
  short: 'Short, or not at all.',
  stop: 'Stop: no work today, or not at this hour.',
};

/** Words of the weather. */
export function weatherWords(t: Tongue) {
  const degrees = (c: number): string => `${t.number(c, 1)} °C`;
  return {
    level: (level: ToldCareLevel): string => LEVELS[level],
    rows: ({
      heatIndexC,
      wetBulbC,
      wbgtC,
      apparentC,
    }: ToldWeather): readonly (readonly [string, string])[] => [
      ['heat index', degrees(heatIndexC)],
      ['wet bulb', wetBulbC === null ? 'can’t say' : degrees(wetBulbC)],
      ['WBGT, estimated', degrees(wbgtC)],
      ['apparent, with wind', degrees(apparentC)],
    ],
    columns: { what: 'what', figure: 'figure' },
    /** What was taken, and what these figures are worth. */
    taken: (windMPerS: number, sun: number | null): string =>
      [
        windMPerS === 0 ? 'Taken: no wind;' : `Taken: wind ${t.wind(windMPerS)};`,
        sun === null
          ? 'sun not told, so the WBGT has moderately strong sun in it.'
          : `sun ${t.number(sun, 1)} of full.`,
        'All four are figures for people. No threshold of any of them is validated for dogs; the levels are cautious, and no safe limits.',
      ].join(' '),
  };
}

export type WeatherWords = ReturnType<typeof weatherWords>;
