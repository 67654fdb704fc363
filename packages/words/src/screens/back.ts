import { spanOfTime } from '../figures.ts';
import type { TimeWords } from '../time.ts';
import type { Tongue } from '../tongue.ts';
import type { TradeWords } from '../trade.ts';
import type { Cause, Expectation, Grade, Skill } from '../vocabulary.ts';

/** A skill as a session asked it: how often, and from where to where. */
export interface ToldAsked {
  readonly skill: Skill;
  readonly times: number;
  readonly overM: { readonly nearest: number; readonly farthest: number } | null;
}

/** Skills that a session's card names; what is left is counted. */
const NAMED = 3;

/** Whose a leg was, where it was not simply the dog's. */
const WHOSE: Readonly<Partial<Record<Cause, string>>> = {
  handler: 'yours, not the dog’s',
  setup: 'the set-up’s, not the dog’s',
  unsure: 'not sure whose',
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Words of Look back: the sessions as a list, and one of them. */
export function backWords(t: Tongue, time: TimeWords, trade: TradeWords) {
  const reps = (n: number): string => t.count(n, 'rep', 'reps');
  const times = (n: number): string => (n === 1 ? 'once' : n === 2 ? 'twice' : `${t.number(n)} times`);
  const over = (overM: ToldAsked['overM']): string => {
    if (overM === null) return '';
    const [near, far] = [t.bareLength(overM.nearest), t.bareLength(overM.farthest)];
    return near === far ? `, ${t.length(overM.farthest)}` : `, ${near} to ${t.length(overM.farthest)}`;
  };
  const skills = (all: readonly Skill[]): string =>
    t.list(all.map((skill) => trade.skill(skill).toLowerCase()));
  /** How the legs went, in words: "of 15 legs: 12 good, 2 fair and 1 missed". */
  const went = ({ good, fair, missed }: Readonly<Record<Grade, number>>): string => {
    const all = good + fair + missed;
    if (all === 0) return 'nothing recorded';
    if (good === all) return all === 1 ? 'its one leg good' : `all ${t.number(all)} legs good`;
    const parts = [
      good > 0 ? `${t.number(good)} good` : '',
      fair > 0 ? `${t.number(fair)} fair` : '',
      missed > 0 ? `${t.number(missed)} missed` : '',
    ].filter((part) => part !== '');
    return `of ${t.count(all, 'leg', 'legs')}: ${t.list(parts)}`;
  };
  return {
    title: 'Look back',
    empty: 'No session yet. What is recorded in Work is found here.',
    toWork: 'To Work',
    earlier: (n: number): string => `${t.number(n)} more, earlier`,
    session: (dog: string, atMs: number): string => `${dog}, ${time.date(atMs)}`,
    reps,
    open: 'still open',
    went,
    wentSaid: (legs: Readonly<Record<Grade, number>>): string => `${capital(went(legs))}.`,
    notFound: 'This session is not in the record.',
    toAll: 'All sessions',
    goOn: 'Go on with it in Work',
    listen: 'Listen',
    listenHint: 'Whistles and clicks from a sound, a film or the microphone, joined to the reps.',
    film: 'Film',
    filmHint: 'The film beside the reps.',
    noReps: 'No rep stands in this session.',
    /** What was asked: "Stop 7 times, 8 to 24 m; line twice, 40 m; left once, 14 m." */
    asked: (all: readonly ToldAsked[]): string => {
      const named = all.slice(0, all.length > NAMED + 1 ? NAMED : all.length);
      const more = all.length - named.length;
      const parts = named.map(
        ({ skill, times: n, overM }) => `${trade.skill(skill).toLowerCase()} ${times(n)}${over(overM)}`,
      );
      if (more > 0) parts.push(`${t.number(more)} more skills`);
      const said = parts.join('; ');
      return said === '' ? '' : `${capital(said)}.`;
    },
    /** The name of a card's drawing: "Field card, rep 3". */
    card: (picture: string, rep: number): string => `${picture}, rep ${t.number(rep)}`,
    rep: (n: number): string => `Rep ${t.number(n)}`,
    /** What came of a leg: "Stop: slow, or a second whistle (not sure whose)". */
    outcome: (skill: Skill, grade: Grade, cause: Cause | null): string => {
      const whose = cause === null ? undefined : WHOSE[cause];
      return `${trade.skill(skill)}: ${trade.gradeAt(skill, grade)}${whose === undefined ? '' : ` (${whose})`}`;
    },
    notReached: (all: readonly Skill[]): string => `Not reached: ${skills(all)}.`,
    clean: (expectation: Expectation): string =>
      expectation === 'none' ? 'Straight through.' : `Straight through: ${trade.expectation(expectation)}.`,
    note: (note: string): string => `“${note}”`,
    onFilm: (atS: number): string => `Film, ${spanOfTime(atS)}`,
    heardAt: (atS: number): string => `Heard, ${spanOfTime(atS)}`,
    /** The same read out: of which rep it is, and in which file. */
    ofRep: (said: string, rep: number, name: string): string =>
      `${said}: rep ${t.number(rep)}${name === '' ? '' : `, ${name}`}`,
    sound: {
      title: 'Sound of this session',
      hear: 'Hear it from the beginning',
      hearAt: (atS: number): string => `Hear, ${spanOfTime(atS)}`,
      hearNote: (lengthS: number): string => `Hear the voice note, ${spanOfTime(Math.max(1, lengthS))}`,
      stop: 'Stop the sound',
      timesOnly: 'The times are kept, not the sound itself.',
      fault: (fault: 'gone' | 'cannot'): string =>
        fault === 'gone'
          ? 'The sound is not on this device: it was kept on another one, or this browser has cleared its store. What was heard in it stays in the record.'
          : 'This browser can’t play the sound. It stays on this device, and the times of what was heard stay in Listen.',
    },
  };
}

export type BackWords = ReturnType<typeof backWords>;
