import type { AskValue, ChangeWords } from './changes.ts';
import { FIELD_NAMES } from './screens/panel.ts';
import type { Tongue } from './tongue.ts';
import type { TradeWords } from './trade.ts';
import { type Ask, HANDLER_PLACE_CODES, TEMPTATION_CODES } from './vocabulary.ts';

/** Everything that makes a leg harder, by the names of the parts of a chance, with the field of the ask it comes from. */
const ASK_FACTORS = {
  distance: 'distanceM',
  late: 'wayFraction',
  temptation: 'temptation',
  handler: 'handlerPlace',
  cover: 'cover',
  distraction: 'distraction',
  obstacle: 'obstacle',
  turn: 'turnDeg',
  cast: 'castM',
  others: 'otherDummies',
  narrow: 'gapDeg',
  blind: 'blind',
  wait: 'waitS',
  wind: 'windAcrossMPerS',
  crew: 'crew',
} as const satisfies Readonly<Record<string, keyof Ask>>;
type AskFactor = keyof typeof ASK_FACTORS;

/** What the program itself adds to an ask. */
const MOMENT_NAMES = {
  newness: 'Sessions here before',
  tired: 'Reps since a break',
  lapse: 'Since last worked',
  'stops-running': 'Stops in a row before',
  'late-temptation': 'Late, and drawn',
  young: 'Age',
} as const;
type MomentFactor = keyof typeof MOMENT_NAMES;

export type FactorCode = AskFactor | MomentFactor;
export const FACTOR_CODES: readonly FactorCode[] = [
  ...(Object.keys(ASK_FACTORS) as AskFactor[]),
  ...(Object.keys(MOMENT_NAMES) as MomentFactor[]),
];

/** One thing that changed, with its part of the step in logits (above 0 harder) and of the chance. */
export interface ChangedFactor<Value> {
  readonly factor: FactorCode;
  readonly from: Value;
  readonly to: Value;
  readonly logit: number;
  readonly chance: number;
}

const NOT_SAID = 'not said';
const isAskFactor = (factor: FactorCode): factor is AskFactor => factor in ASK_FACTORS;

/** The things that change between two asks: their names, their values, and the change in words. */
export function factorWords(t: Tongue, trade: TradeWords, changes: ChangeWords) {
  const days = (n: number): string => (n < 1 ? 'the same day' : t.count(Math.round(n), 'day', 'days'));

  /** What the moment added, as a change. Harder and easier are told apart by the logit. */
  const moment: Readonly<Record<MomentFactor, (to: number | null, isHarder: boolean) => string>> = {
    newness: (to, isHarder) => {
      if (to === 0) return 'the ground is new to the dog';
      return isHarder ? 'ground that is less well known' : 'ground that is better known';
    },
    tired: (to) => (to === null ? 'the time since a break' : `${t.count(to, 'rep', 'reps')} since a break`),
    lapse: (to, isHarder) =>
      isHarder && to !== null && to >= 1 ? `${days(to)} since it was last worked` : 'worked more lately',
    'stops-running': (to) =>
      to ? `${t.count(to, 'stop', 'stops')} in a row before it` : 'no stop before it',
    'late-temptation': (_to, isHarder) =>
      isHarder ? 'late, with more to draw' : 'less late, or less to draw',
    young: (_to, isHarder) => (isHarder ? 'the dog was younger' : 'the dog was older'),
  };

  /** A value of one field of an ask. */
  const askValue = (field: keyof Ask, value: AskValue | null): string => {
    const temptation = TEMPTATION_CODES.find((code) => code === value);
    if (temptation !== undefined) return trade.temptation(temptation);
    const place = HANDLER_PLACE_CODES.find((code) => code === value);
    if (place !== undefined) return trade.handlerPlace(place);
    if (typeof value === 'boolean') return value ? 'unseen' : 'seen';
    if (typeof value !== 'number' || !Number.isFinite(value)) return NOT_SAID;
    switch (field) {
      case 'distanceM':
      case 'castM':
        return t.length(value);
      case 'wayFraction':
        return `${t.number(value * 100)} %`;
      case 'turnDeg':
      case 'gapDeg':
        return `${t.number(value)}°`;
      case 'cover':
        return trade.cover(value);
      case 'distraction':
        return trade.distraction(value);
      case 'obstacle':
        return trade.obstacle(value);
      case 'waitS':
        return `${t.number(value)} s`;
      case 'windAcrossMPerS':
        return t.wind(value);
      default:
        return t.number(value);
    }
  };

  const momentValue = (factor: MomentFactor, value: AskValue | null): string => {
    // A product of two that have rows of their own.
    if (factor === 'late-temptation') return '–';
    if (typeof value !== 'number' || !Number.isFinite(value)) return NOT_SAID;
    if (factor === 'lapse') return days(value);
    return factor === 'young' ? t.count(Math.floor(value), 'month', 'months') : t.number(value);
  };

  return {
    /** Name of a thing that changed, for a row of a table: "How far out". */
    factor: (factor: FactorCode): string =>
      isAskFactor(factor) ? FIELD_NAMES[ASK_FACTORS[factor]] : MOMENT_NAMES[factor],
    /** Its value in one leg, for a cell: "20 m", "a placed dummy". */
    value: (factor: FactorCode, value: AskValue | null): string =>
      isAskFactor(factor) ? askValue(ASK_FACTORS[factor], value) : momentValue(factor, value),
    /** The change in words: "12 m farther". */
    phrase: ({ factor, from, to, logit }: ChangedFactor<AskValue | null>): string =>
      isAskFactor(factor)
        ? changes.phrase(ASK_FACTORS[factor], from ?? undefined, to ?? undefined)
        : moment[factor](typeof to === 'number' ? to : null, logit > 0),
    /** A part of a chance, in a hundred: "12 less", "3 more", "under 1". */
    part: (chance: number): string => {
      const n = Math.round(Math.abs(chance) * 100);
      if (n < 1) return 'under 1';
      return `${t.number(n)} ${chance < 0 ? 'less' : 'more'}`;
    },
  };
}
