import type { ChanceWords } from './chances.ts';
import type { TimeWords } from './time.ts';
import type { Tongue } from './tongue.ts';
import type { TradeWords } from './trade.ts';
import type { Skill } from './vocabulary.ts';
import type { WhyWords } from './why.ts';
import { FACTOR_CODES } from './why-factors.ts';

/** When a goal may be reached, as far as it is told. */
export interface ToldForecast {
  readonly perWeek: number;
  readonly isOwnPace: boolean;
  readonly forecast: {
    readonly weeks: readonly { readonly probabilityReady: number }[];
    readonly readyInWeeks: {
      readonly p10: number | null;
      readonly p50: number | null;
      readonly p90: number | null;
    };
    readonly first: readonly { readonly skill: Skill; readonly factor: string; readonly gain: number }[];
  };
  readonly by: { readonly date: string; readonly probabilityReady: number } | null;
}

/** How many factors are told of those that would be worth proofing. */
const FIRST_TOLD = 2;
/** A gain under this is not worth a word (our judgement, 2026). */
const WORTH_A_WORD = 0.01;

/** From here on a thing "looks" so, below it "may be" so, as with patterns. */
const LOOKS_LIKE = 0.8;

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** Words of a season: goals and when they may be reached. */
export function seasonWords(
  t: Tongue,
  trade: TradeWords,
  chances: ChanceWords,
  time: TimeWords,
  why: WhyWords,
) {
  const weeks = (n: number): string => t.count(n, 'week', 'weeks');

  const pace = ({ perWeek, isOwnPace }: ToldForecast): string => {
    if (perWeek === 0) return 'with no session at all';
    const sessions = `${t.number(perWeek, 1)} ${perWeek === 1 ? 'session' : 'sessions'} a week`;
    return isOwnPace ? `at the pace of late, ${sessions}` : `at ${sessions}`;
  };

  /** "may be 3 to 9"; "may be from 3 on, or not within 26"; nothing where there is nothing to tell apart. */
  const spread = ({ forecast }: ToldForecast, horizon: number): string => {
    const { p10, p50, p90 } = forecast.readyInWeeks;
    if (p10 === null || (p10 === p50 && p90 === p50)) return '';
    const from = p10 === 0 ? 'now' : t.number(p10);
    if (p90 === null) return `, may be from ${from} on, or not within ${t.number(horizon)}`;
    return `, may be ${from} to ${t.number(p90)}`;
  };

  /** When: one sentence. */
  const when = (told: ToldForecast): string => {
    const { readyInWeeks, weeks: all } = told.forecast;
    const horizon = Math.max(0, all.length - 1);
    const [first, last] = [all[0]?.probabilityReady ?? 0, all.at(-1)?.probabilityReady ?? 0];
    if (readyInWeeks.p50 === 0)
      return `${first > LOOKS_LIKE ? 'Looks' : 'May be'} ready now: ${chances.plain(first)}.`;
    if (readyInWeeks.p50 !== null)
      return `Likely ready in ${weeks(readyInWeeks.p50)}${spread(told, horizon)}, ${pace(told)}.`;
    const now = chances.inHundred(last) === chances.inHundred(first) ? 'now or ' : '';
    return `Not likely ready within ${weeks(horizon)}: ${chances.plain(last)} ${now}by then, ${pace(told)}.`;
  };

  const byDate = ({ by }: ToldForecast): string[] =>
    by === null
      ? []
      : [`By ${time.date(Date.parse(by.date), 'UTC')}: ${chances.plain(by.probabilityReady)}.`];

  const factor = (code: string): string => {
    const known = FACTOR_CODES.find((one) => one === code);
    return known === undefined ? code : lowerFirst(why.factor(known));
  };

  /** What to proof first: "To proof first: stop, what draws (10 in 100 more if it cost nothing)." */
  const first = ({ forecast }: ToldForecast): string[] => {
    const worth = forecast.first.filter(({ gain }) => gain >= WORTH_A_WORD).slice(0, FIRST_TOLD);
    if (worth.length === 0) return [];
    const each = worth.map(
      ({ skill, factor: code, gain }) =>
        `${lowerFirst(trade.skillInWords(skill))}, ${factor(code)} (${chances.inHundred(gain)} in 100 more)`,
    );
    return [`To proof first: ${each.join('; ')}.`];
  };

  return {
    when,
    /** All that is said of a forecast, a sentence each. */
    all: (told: ToldForecast): readonly string[] => [when(told), ...byDate(told), ...first(told)],
    cantSay: (reason: 'no-asks' | 'no-session', dogName: string): string =>
      reason === 'no-asks'
        ? 'Can’t say: this goal asks for nothing yet. Give it an ask, and the chance that is wanted.'
        : `Can’t say yet: ${dogName} has no session on record. Ask again after the first.`,
    /** A skill of the goal of which too little is known. */
    notKnown: (skill: Skill, legs: number): string =>
      `Not known yet: ${lowerFirst(trade.skillInWords(skill))} (${legs === 0 ? 'never worked' : t.count(legs, 'leg', 'legs')}).`,
    /** What the two columns of chances mean, under the tables. */
    stated: 'Ready: every ask at its wanted chance, by that week. All good: every ask good on the same day.',
    columns: {
      ask: 'asked',
      wanted: 'wanted',
      now: 'now, in 100',
      week: 'week',
      ready: 'ready, in 100',
      allGood: 'all good, in 100',
    },
    now: 'now',
  };
}

export type SeasonWords = ReturnType<typeof seasonWords>;
