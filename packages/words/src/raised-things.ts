import type { Tongue } from './tongue.ts';
import type { TradeWords } from './trade.ts';
import type { Ask } from './vocabulary.ts';

/** The things that a rep raises, as a list in a sentence: "distance and a thrown dummy". */
export function raisedThings(t: Tongue, trade: TradeWords) {
  const names: Readonly<Record<keyof Ask, (to: Ask) => string>> = {
    distanceM: () => 'distance',
    wayFraction: () => 'a later stop',
    temptation: ({ temptation: to }) => (to === undefined ? 'what draws the dog' : trade.temptation(to)),
    handlerPlace: ({ handlerPlace: to }) =>
      to === undefined ? 'where you stand' : `your place ${trade.handlerPlace(to)}`,
    cover: () => 'cover',
    distraction: () => 'who is about',
    turnDeg: () => 'the angle of the hand',
    castM: () => 'the length of the cast',
    otherDummies: () => `other ${t.dummies} out`,
    gapDeg: () => `another ${t.dummy} nearer the line`,
    blind: () => `an unseen ${t.dummy}`,
    waitS: () => 'the wait',
    obstacle: ({ obstacle: to }) => (to === undefined ? 'what is in the way' : trade.obstacle(to)),
    windAcrossMPerS: () => 'the wind across',
    crew: () => 'dogs worked in turn',
  };
  return (fields: readonly (keyof Ask)[], to: Ask = {}): string =>
    t.list(fields.map((field) => names[field](to)));
}
