import type { AskWords } from '../ask.ts';
import type { ChanceWords } from '../chances.ts';
import type { TimeWords } from '../time.ts';
import type { Tongue } from '../tongue.ts';
import type { TradeWords } from '../trade.ts';
import type { Ask, Skill } from '../vocabulary.ts';

type Named = 'easy' | 'usual' | 'far';
const NAMES: Readonly<Record<Named, string>> = { easy: 'Easy', usual: 'Usual', far: 'Far' };

/** Words of a dog's season: its goals, how they are made, and the chance by week. */
export function seasonScreenWords(
  t: Tongue,
  trade: TradeWords,
  ask: AskWords,
  chances: ChanceWords,
  time: TimeWords,
) {
  const askName = (skill: Skill, one: Ask): string =>
    `${trade.skillInWords(skill)}, ${ask.figures(skill, one)}`;
  return {
    title: (dog: string): string => `${dog}: the season`,
    link: 'Goals and the season',
    notFound: 'This dog is not in the record.',
    back: (dog: string): string => `What ${dog} can do`,
    empty: (dog: string): string =>
      `${dog} has no goal yet. Choose what it is to be trusted with, how sure, and by when; then the weeks are reckoned.`,
    fewSessions: (dog: string): string =>
      `${dog} has no session on record, so no week can be reckoned yet. The goal can be set all the same.`,
    newGoal: 'Set a goal',
    anotherGoal: 'Set another goal',
    change: 'Change this goal',
    setAside: 'Set it aside',
    setAsideSaid: 'Set aside: it asks for nothing now.',
    takeBack: 'Take that back',
    by: (date: string): string => `by ${time.date(Date.parse(date), 'UTC')}`,
    noDate: 'no date',
    askName,
    wantedNow: (wanted: number, now: number, interval90: readonly [number, number]): string =>
      `${chances.plain(wanted)} wanted; now ${chances.withInterval(now, interval90)}`,
    pace: 'Sessions a week',
    ownPace: 'As of late',
    perWeek: (n: number): string => t.number(n),
    waiting: 'Playing the weeks to come.',
    failed: 'That could not be worked out. The goal is as it was; try again.',
    chart: {
      title: 'The chance by week',
      ready: 'The thick line: ready by that week.',
      band: 'The dotted line: every ask good on one and the same day; the band is what it may be, 90 in 100.',
      date: 'The upright line: the date of the goal.',
      week: (n: number): string => (n === 0 ? 'now' : t.number(n)),
      weeks: 'weeks from now',
      scale: (chance: number): string => t.number(100 * chance),
      dateMark: (date: string): string => time.date(Date.parse(date), 'UTC'),
      table: 'Every week as a table',
    },
    form: {
      title: 'A goal',
      name: 'Name',
      nameHint: 'Left empty, it is named by its asks.',
      by: 'By when?',
      byHint: 'May be left empty.',
      skill: 'What is to be trusted?',
      ask: 'How hard?',
      named: (name: Named): string => NAMES[name],
      addAsk: (name: Named, skill: Skill): string =>
        `${trade.skillInWords(skill)}: ${NAMES[name].toLowerCase()}`,
      nowIs: (chance: number): string => `now ${chances.plain(chance)}`,
      wanted: 'How sure, in 100?',
      wantedIs: (chance: number): string => chances.inHundred(chance),
      figures: (skill: Skill, one: Ask): string => ask.figures(skill, one),
      asks: 'What it asks',
      none: 'Nothing yet: choose a skill, then how hard.',
      own: 'Set it by hand',
      remove: (one: string): string => `Take out: ${one}`,
      removeKey: 'Take out',
      save: 'Set the goal',
      cancel: 'Leave it',
      noAsk: 'A goal asks for one thing at least: choose a skill, then how hard.',
      badDate: 'A date such as 2027-02-20, still to come, or nothing.',
    },
    /** A goal named by its asks: "Stop on the whistle and cast back". */
    nameOf: (skills: readonly Skill[]): string => {
      const names = [...new Set(skills)].map((skill) => trade.skillInWords(skill).toLowerCase());
      const text = t.list(names);
      return text.charAt(0).toUpperCase() + text.slice(1);
    },
  };
}

export type SeasonScreenWords = ReturnType<typeof seasonScreenWords>;
