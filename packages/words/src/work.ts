import type { Tongue } from './tongue.ts';
import type { TradeWords } from './trade.ts';
import type { Ask, AskedLeg, Cause, Expectation, Grade, Skill } from './vocabulary.ts';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const two = (n: number): string => String(n).padStart(2, '0');

/** Names of the fields of an ask, as a handler would say them. */
const FIELD_NAMES: Readonly<Record<keyof Ask, string>> = {
  distanceM: 'How far out',
  wayFraction: 'Share of the way run',
  temptation: 'What draws',
  handlerPlace: 'Where you stand',
  cover: 'Cover',
  distraction: 'Who is about',
  turnDeg: 'Angle of the hand',
  castM: 'How far the cast carries',
  otherDummies: 'Others lying out',
  gapDeg: 'Gap to the nearest other',
  blind: 'Seen or unseen',
  waitS: 'Wait first',
  obstacle: 'In the way',
  windAcrossMPerS: 'Wind across',
  crew: 'Dogs worked in turn',
};

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
    title: (dog: string): string => `Work: ${dog}`,
    rep: (n: number): string => `rep ${t.number(n)}`,
    clock: (elapsedS: number): string => {
      const whole = Math.max(0, Math.floor(elapsedS));
      return `${two(Math.floor(whole / 60))}:${two(whole % 60)}`;
    },
    clockName: 'Time since the session began',
    breakIn: (n: number): string => `break in ${t.number(n)}`,
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
    chosen: 'Your choice',
    backToSuggested: 'As suggested',
    opening: 'Reading the record',
    after: {
      cause: (skill: Skill, grade: Grade): string =>
        `${trade.skill(skill)} ${trade.gradeOnKey(skill, grade)}: whose was it?`,
      causeSaid: (cause: Cause): string => `Noted: ${trade.cause(cause).toLowerCase()}`,
      causes: { dog: 'Dog', handler: 'Me', setup: 'Set-up', unsure: 'Not sure' } as Readonly<
        Record<Cause, string>
      >,
      expectation: 'How was it run, with no whistle?',
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
    break: {
      title: 'Break',
      say: 'Water, shade, a game. No work.',
      left: (leftS: number): string => {
        const whole = Math.max(0, Math.ceil(leftS));
        return `${Math.floor(whole / 60)}:${two(whole % 60)}`;
      },
      leftInWords: (leftS: number): string =>
        leftS <= 0 ? 'The break is over.' : `${minutes(Math.ceil(leftS / 60))} left`,
      over: 'Ready when you are',
      backToWork: 'Back to work',
      due: 'Time for a break',
      take: (n: number): string => `Break, ${minutes(n)}`,
      goOn: 'Go on without',
      now: 'Break now',
    },
    end: {
      suggest: 'Enough for today',
      close: 'End the session',
      oneMore: 'One more',
      title: (dog: string): string => `${dog}: done for today`,
      reps: (n: number): string => t.count(n, 'rep', 'reps'),
      minutes: (n: number): string => minutes(Math.max(1, Math.round(n))),
      none: 'No rep was recorded.',
      column: { skill: 'Skill', good: 'Good', fair: 'Fair', missed: 'Missed' },
      notDogs: (n: number): string => `${t.count(n, 'leg', 'legs')} not held against the dog.`,
      breaks: (n: number): string => t.count(n, 'break', 'breaks'),
      nextTime: 'Next time',
      toDog: (dog: string): string => `What ${dog} can do`,
      toDogs: 'All dogs',
      again: 'Another session',
    },
    open: {
      title: (dog: string): string => `A session with ${dog}`,
      ground: 'Where?',
      noGround: 'Not said',
      newGround: 'A new ground',
      groundName: 'Name of the new ground',
      focus: 'What to work on?',
      anything: 'Whatever is due',
      go: 'Go',
      carryOn: (dog: string): string => `Carry on with ${dog}`,
      none: 'No session is open. Choose a dog to work.',
      unknown: 'No dog of that kind in this record.',
      toDogs: 'To the dogs',
      empty: 'First a dog: a name is enough.',
    },
    panel: {
      title: 'More',
      close: 'Back to the pad',
      ask: 'What is asked',
      askHint: 'What you set here is asked, and recorded as done.',
      leg: 'Leg',
      all: 'Reps so far',
      none: 'None yet.',
      skills: 'Work on something else',
      otherDogs: 'Another dog’s session',
      note: 'Note on this rep',
      noteSave: 'Keep the note',
      end: 'End the session',
      strike: 'Take this rep out',
      amendments: (n: number): string => `changed ${t.count(n, 'time', 'times')}`,
      changeLeg: (skill: Skill): string => `Change ${trade.skillInWords(skill).toLowerCase()}`,
      clean: 'Straight through',
      blewLate: 'I blew later',
      blewEarly: 'I blew earlier',
      blewHint: (byM: number): string => `The stop moves by ${t.length(byM)}.`,
      keys: 'Keys: 1 missed, 2 fair, 3 good, space the wide key, 0 undo, 4 to 7 the cause, H harder, E easier, C let run, B break, M more.',
      keysOn: 'Single keys on this screen',
      easyEnd: 'the easy end',
    },
    field: (field: keyof Ask): string => FIELD_NAMES[field],
    less: (field: keyof Ask, by: string): string => `${FIELD_NAMES[field]}: ${by} less`,
    add: (field: keyof Ask, by: string): string => `${FIELD_NAMES[field]}: ${by} more`,
    fieldUnit: (field: keyof Ask): string => {
      switch (field) {
        case 'distanceM':
        case 'castM':
          return t.units === 'yards' ? 'yd' : 'm';
        case 'wayFraction':
          return 'in 100';
        case 'turnDeg':
        case 'gapDeg':
          return '°';
        case 'waitS':
          return 's';
        case 'windAcrossMPerS':
          return 'm/s';
        default:
          return '';
      }
    },
    seen: { false: 'seen', true: 'unseen' } as const,
    legOf: (leg: AskedLeg): string => trade.skill(leg.skill),
  };
}

export type WorkWords = ReturnType<typeof workWords>;
