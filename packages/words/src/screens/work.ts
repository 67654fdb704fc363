import { spanOfTime } from '../figures.ts';
import type { Tongue } from '../tongue.ts';
import type { TradeWords } from '../trade.ts';
import type { Cause, Expectation, Grade, Skill } from '../vocabulary.ts';
import { inTurnWords } from './in-turn.ts';
import { lastRepWords } from './last-rep.ts';
import { panelWords } from './panel.ts';
import { pocketWords } from './pocket.ts';
import { repHistoryWords } from './rep-history.ts';
import { sessionWords } from './session.ts';
import { voiceWords } from './voice.ts';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What a leg of each skill is called when its chance is stated: "a prompt stop". */
const GOOD_LEG: Readonly<Record<Skill, string>> = {
  steady: 'staying steady',
  line: 'a straight line',
  stop: 'a prompt stop',
  'cast-left': 'taking the left cast',
  'cast-right': 'taking the right cast',
  'cast-back': 'taking the back cast',
  hunt: 'holding the hunt',
  mark: 'straight to the mark',
  pickup: 'a clean pick-up',
  delivery: 'a delivery to hand',
  recall: 'coming straight in',
  heel: 'staying close',
  leave: 'leaving it',
};

/** Words of Work: the card, the pad, the break, opening and closing a session. */
export function workWords(t: Tongue, trade: TradeWords) {
  const minutes = (n: number): string => t.count(n, 'minute', 'minutes');
  const legGrade = (skill: Skill, grade: Grade): string =>
    `${trade.skill(skill).toLowerCase()} ${trade.grade(grade)}`;
  return {
    ...sessionWords(t),
    ...panelWords(t, trade),
    ...repHistoryWords(t, trade),
    ...lastRepWords(t, trade),
    inTurn: inTurnWords(t),
    pocket: pocketWords(),
    voice: voiceWords(t),
    title: (dog: string): string => `Work: ${dog}`,
    rep: (n: number): string => `rep ${t.number(n)}`,
    /** How long the session has gone on: seconds at first, then whole minutes, which is what breaks are counted in. */
    clock: (elapsedS: number): string => {
      const whole = Math.max(0, Math.floor(elapsedS));
      return spanOfTime(whole < 60 ? whole : whole - (whole % 60));
    },
    clockName: 'Time since the session began',
    breakIn: (n: number): string => `break in ${t.number(n)} min`,
    breakDue: 'break due',
    chanceOf: (skill: Skill): string => GOOD_LEG[skill],
    chanceKnownFew: 'not known yet',
    legs: 'The legs of this rep',
    legNow: 'now',
    graded: (skill: Skill, grade: Grade): string => `${trade.skill(skill)}: ${trade.grade(grade)}`,
    pad: 'How did it go?',
    padFor: (skill: Skill): string => `How did the ${trade.skillInWords(skill).toLowerCase()} go?`,
    grade: { missed: 'Missed', fair: 'Fair', good: 'Good' } as Readonly<Record<Grade, string>>,
    allWell: 'All went well',
    restWell: 'The rest went well',
    endedThere: 'Ended there',
    undo: 'Undo',
    easier: 'Easier',
    harder: 'Harder',
    letRun: 'Let run',
    letRunInWords: 'Straight through, no whistle',
    more: 'More',
    nothingEasier: 'There is nothing easier to go back to.',
    nothingHarder: 'There is no step up from this.',
    nothingThatWay: 'There is nothing that way.',
    invented: 'invented',
    chosen: 'Your choice',
    backToSuggested: 'As suggested',
    opening: 'Reading the record',
    after: {
      cause: (rep: number, skill: Skill, grade: Grade): string =>
        `Rep ${t.number(rep)}, ${trade.skill(skill).toLowerCase()}: ${trade.gradeOnKey(skill, grade)}. Whose was it?`,
      whose: 'Whose was it?',
      causeSaid: (cause: Cause): string => `Noted: ${trade.cause(cause).toLowerCase()}`,
      causes: { dog: 'Dog', handler: 'Me', setup: 'Set-up', unsure: 'Not sure' } as Readonly<
        Record<Cause, string>
      >,
      expectation: (rep: number): string => `Rep ${t.number(rep)}, straight through. How was it run?`,
      expectations: {
        none: 'Went straight out',
        'hangs-back': 'Hung back',
        'stops-unasked': 'Stopped by itself',
      } as Readonly<Record<Expectation, string>>,
    },
    said: {
      recorded: (rep: number, legs: readonly { readonly skill: Skill; readonly grade: Grade }[]): string =>
        `Rep ${t.number(rep)}: ${t.list(legs.map((leg) => legGrade(leg.skill, leg.grade)))}, recorded.`,
      inMemory: 'Kept in memory only: the device would not save it.',
      undone: 'The last tap is undone.',
      nothingToUndo: 'There is nothing to undo.',
      cause: (cause: Cause): string => `Cause: ${trade.cause(cause).toLowerCase()}.`,
      expectation: (expectation: Expectation): string =>
        `${capital(trade.expectation(expectation))}, recorded.`,
      ended: 'This rep ended there.',
      next: (sentence: string): string => `Next: ${sentence}`,
      now: (skill: Skill): string => `Now: ${trade.skill(skill).toLowerCase()}.`,
      breakBegun: (n: number): string => `Break of ${minutes(n)}.`,
      breakOver: 'The break is over.',
      closed: 'The session is closed.',
      amended: 'Changed; what it was before stays in the record.',
      noted: 'Note kept.',
      struck: 'The rep is taken out; it can be brought back.',
      restored: 'The rep is back.',
    },
    notSaved: {
      title: (count: number): string =>
        count === 0
          ? 'The record cannot be saved'
          : `${t.count(count, 'entry is', 'entries are')} not on this device yet`,
      kept: 'Nothing is lost while this page stays open: work on, and every tap tries again.',
      retry: 'Try again',
      file: 'Save as a file',
    },
    fault: (message: string): string =>
      `The program could not start (${message}). What is on record is left as it is; reload the page.`,
    damage: (n: number): string =>
      `${t.count(n, 'part', 'parts')} of the record could not be read; everything else is here.`,
  };
}

export type WorkWords = ReturnType<typeof workWords>;
