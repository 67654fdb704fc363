import type { Tongue } from './tongue.ts';
import type { TradeWords } from './trade.ts';
import { HANDLER_PLACE_CODES, type HandlerPlace, TEMPTATION_CODES, type Temptation } from './vocabulary.ts';

/** A figure of an ask as reasons carry it. */
export type AskValue = number | string | boolean | undefined;

const isTemptation = (value: AskValue): value is Temptation =>
  TEMPTATION_CODES.some((code) => code === value);
const isPlace = (value: AskValue): value is HandlerPlace =>
  HANDLER_PLACE_CODES.some((code) => code === value);

/** What changed between two asks, in words. */
export function changeWords(t: Tongue, trade: TradeWords) {
  const metres = (from: number, to: number, more: string, less: string): string =>
    `${t.length(Math.abs(to - from))} ${to >= from ? more : less}`;

  const numeric: Readonly<Record<string, (from: number, to: number) => string>> = {
    distanceM: (from, to) => metres(from, to, 'farther', 'nearer'),
    wayFraction: (from, to) => `the stop comes ${to >= from ? 'later' : 'earlier'} on the line`,
    cover: (_from, to) => `${trade.cover(to)} ground`,
    distraction: (_from, to) => trade.distraction(to),
    turnDeg: (from, to) => `the turn is ${t.number(Math.abs(to - from))}° ${to >= from ? 'more' : 'less'}`,
    castM: (from, to) => `the cast is ${metres(from, to, 'longer', 'shorter')}`,
    otherDummies: (_from, to) =>
      to === 0 ? `no other ${t.dummy} out` : `${t.count(to, `other ${t.dummy}`, `other ${t.dummies}`)} out`,
    gapDeg: (from, to) =>
      `the nearest other temptation is ${t.number(Math.abs(to - from))}° ${to <= from ? 'closer to' : 'wider of'} the line`,
    waitS: (from, to) =>
      `the wait is ${t.number(Math.abs(to - from))} s ${to >= from ? 'longer' : 'shorter'}`,
    obstacle: (_from, to) => trade.obstacle(to),
    windAcrossMPerS: (_from, to) => (to === 0 ? 'no cross-wind' : `a cross-wind of ${t.wind(to)}`),
    crew: (_from, to) =>
      to === 0 ? 'no other dog worked in turn' : `${t.count(to, 'other dog', 'other dogs')} worked in turn`,
  };

  return {
    /** One change of one field; "one thing" where the field or its figures are not known here. */
    phrase: (field: string | undefined, from: AskValue, to: AskValue): string => {
      if (field === 'blind') return to === true ? `the ${t.dummy} lies unseen` : `the ${t.dummy} is seen`;
      if (field === 'temptation' && isTemptation(to)) return `what draws the dog is ${trade.temptation(to)}`;
      if (field === 'handlerPlace' && isPlace(to)) return `you stand ${trade.handlerPlace(to)}`;
      const say = field === undefined ? undefined : numeric[field];
      if (!say || typeof to !== 'number' || !Number.isFinite(to)) return 'one thing is changed';
      return say(typeof from === 'number' && Number.isFinite(from) ? from : 0, to);
    },
  };
}

export type ChangeWords = ReturnType<typeof changeWords>;
