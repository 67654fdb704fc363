import type { AskWords } from './ask.ts';
import type { TimeWords } from './time.ts';
import type { Tongue } from './tongue.ts';
import type { TradeWords } from './trade.ts';
import type { Ask, Grade, Skill } from './vocabulary.ts';

/** What a mark on a film says was seen. */
export type FilmMarkName = 'sent' | 'whistle' | 'halt' | 'cast' | 'pick-up' | 'delivery';
export const FILM_MARK_CODES: readonly FilmMarkName[] = [
  'sent',
  'whistle',
  'halt',
  'cast',
  'pick-up',
  'delivery',
];

const MARKS: Readonly<Record<FilmMarkName, string>> = {
  sent: 'Sent',
  whistle: 'Whistle',
  halt: 'Halt',
  cast: 'Cast',
  'pick-up': 'Pick-up',
  delivery: 'To hand',
};

/** A time between two marks and the bounds it lies in, seconds. */
interface ToldTime {
  readonly s: number;
  readonly lowS: number;
  readonly highS: number;
  readonly byHand: boolean;
}

interface ToldSpeed {
  readonly mPerS: number;
  readonly lowMPerS: number;
  readonly highMPerS: number | null;
  readonly overM: number;
}

/** What the marks of a rep on one film come to. */
export interface ToldFigures {
  readonly marks: number;
  readonly halts: readonly {
    readonly leg: number | null;
    readonly latency: ToldTime | null;
    readonly blasts: number;
    readonly held: ToldTime | null;
  }[];
  readonly out: ToldTime | null;
  readonly back: ToldTime | null;
  readonly untilWhistle: ToldTime | null;
  readonly speedOut: ToldSpeed | null;
  readonly speedToHalt: ToldSpeed | null;
  readonly speedBack: ToldSpeed | null;
}

/** A leg as a summary tells it. */
interface ToldLeg {
  readonly skill: Skill;
  readonly ask: Ask;
  readonly grade: Grade;
}

/** A session with what was marked on one of its films. */
export interface ToldFilm {
  readonly dogName: string;
  readonly groundName: string | null;
  readonly atMs: number;
  readonly film: string;
  readonly lengthS: number | null;
  readonly reps: readonly {
    readonly legs: readonly ToldLeg[];
    readonly marks: readonly { readonly heard: boolean }[];
    readonly figures: ToldFigures | null;
  }[];
}

/** Miles an hour in one metre a second, exact by the agreement of 1959. */
const MPH_PER_M_PER_S = 3600 / 1609.344;
/** No dog is faster: the fastest that race reach about 18 m/s (from memory). */
const FASTEST_M_PER_S = 20;

/** A moment of a film: "2:07.433", "1:02:07.433". */
export function filmMoment(atS: number, decimals = 3): string {
  const ten = 10 ** decimals;
  const ticks = Math.round(Math.max(0, atS) * ten);
  const wholeS = Math.floor(ticks / ten);
  const two = (n: number): string => String(n).padStart(2, '0');
  const hours = Math.floor(wholeS / 3600);
  const minutes = Math.floor((wholeS % 3600) / 60);
  const rest = decimals === 0 ? '' : `.${String(ticks % ten).padStart(decimals, '0')}`;
  return `${hours === 0 ? minutes : `${hours}:${two(minutes)}`}:${two(wholeS % 60)}${rest}`;
}

/** Words of what was seen on a film: marks, what they come to, and a summary to hand on. */
export function filmFigureWords(t: Tongue, trade: TradeWords, ask: AskWords, time: TimeWords) {
  const mark = (what: FilmMarkName): string => MARKS[what];
  const seconds = (s: number): string => `${t.number(s, 2)} s`;
  const span = ({ s, lowS, highS }: ToldTime): string =>
    `${seconds(s)} (${t.number(lowS, 2)} to ${t.number(highS, 2)})`;
  const [unit, per] = t.units === 'yards' ? ['mph', MPH_PER_M_PER_S] : ['m/s', 1];
  const speed = ({ mPerS, lowMPerS, highMPerS, overM }: ToldSpeed): string => {
    const high = highMPerS === null ? 'more' : t.number(highMPerS * per, 1);
    const odd = mPerS > FASTEST_M_PER_S ? ': no dog runs so fast, look at the marks and the distance' : '';
    return `${t.number(mPerS * per, 1)} ${unit} (${t.number(lowMPerS * per, 1)} to ${high}) over the ${t.length(overM)} asked${odd}`;
  };
  const halt = ({ latency, blasts, held }: ToldFigures['halts'][number]): readonly string[] => {
    const again = blasts > 1 ? `, counted from the first of ${t.number(blasts)} blasts` : '';
    return [
      latency === null ? 'halted; no whistle is marked' : `halted ${span(latency)} after the whistle${again}`,
      ...(held === null ? [] : [`held ${span(held)} before the cast`]),
    ];
  };
  /** Each figure in a few words, the halts first. */
  const figures = (f: ToldFigures): readonly string[] => [
    ...f.halts.flatMap(halt),
    ...(f.untilWhistle === null ? [] : [`whistle ${span(f.untilWhistle)} after the send`]),
    ...(f.out === null ? [] : [`out ${span(f.out)}`]),
    ...(f.back === null ? [] : [`back ${span(f.back)}`]),
    ...(f.speedOut === null ? [] : [`straight out at ${speed(f.speedOut)}`]),
    ...(f.speedToHalt === null ? [] : [`to the halt at ${speed(f.speedToHalt)}`]),
    ...(f.speedBack === null ? [] : [`home at ${speed(f.speedBack)}`]),
  ];
  /** What a rep shows, in one line: "Line to the memory, stop, left to the blind. Line straight, stop slow, or a second whistle." */
  const shows = (legs: readonly ToldLeg[]): string => {
    const went = legs.map(({ skill, grade }) => {
      const [name, how] = [trade.skill(skill).toLowerCase(), trade.gradeAt(skill, grade)];
      return name === how ? how : `${name}: ${how}`;
    });
    return went.length === 0 ? 'Nothing graded.' : `${ask.rep(legs)} ${capital(went.join('; '))}.`;
  };
  const summary = (told: ToldFilm): string => {
    const marked = told.reps.filter(({ marks }) => marks.length > 0);
    const all = marked.flatMap(({ marks }) => marks);
    const heard = all.filter((one) => one.heard).length;
    const length = told.lengthS === null ? '' : `, ${filmMoment(told.lengthS, 0)} long`;
    const where = told.groundName === null ? '' : `, ${told.groundName}`;
    const rep = ({ legs, figures: f }: ToldFilm['reps'][number], n: number): string => {
      const said = f === null ? [] : figures(f);
      return [
        `Rep ${t.number(n + 1)}: ${shows(legs)}`,
        ...(said.length === 0 ? [] : [`  On film: ${said.join('; ')}.`]),
      ].join('\n');
    };
    const latencies = told.reps
      .flatMap(({ figures: f }) => f?.halts ?? [])
      .flatMap(({ latency }) => (latency === null ? [] : [latency]));
    return [
      `${told.dogName}, ${time.date(told.atMs)}${where}`,
      `${t.count(told.reps.length, 'rep', 'reps')}; ${t.number(marked.length)} marked on the film ${oneLine(told.film)}${length}.`,
      '',
      ...told.reps.map(rep),
      '',
      ...(latencies.length === 0 ? [] : [halts(latencies)]),
      ...(all.length === 0 ? ['Nothing is marked on the film yet.'] : [made(all.length, heard), HOW_SURE]),
      'Graded by the handler as it happened.',
      '',
    ].join('\n');
  };
  const halts = (latencies: readonly ToldTime[]): string => {
    const sorted = latencies.map(({ s }) => s).toSorted((a, b) => a - b);
    if (sorted.length === 1) return `One halt timed: ${span(latencies[0]!)} after the whistle.`;
    return `${t.number(sorted.length)} halts timed: from ${seconds(sorted[0]!)} to ${seconds(sorted.at(-1)!)} after the whistle.`;
  };
  const made = (all: number, heard: number): string => {
    if (heard === 0)
      return all === 1
        ? 'The one mark was made by hand, on a frame of the film.'
        : `All ${t.number(all)} marks were made by hand, each on a frame of the film.`;
    if (heard === all) return `All ${t.number(all)} marks were found by the program in the sound.`;
    return `${t.number(all - heard)} of ${t.number(all)} marks were made by hand, each on a frame of the film; ${t.number(heard)} ${heard === 1 ? 'was' : 'were'} found by the program in the sound.`;
  };
  return {
    mark,
    figures,
    seconds,
    shows,
    summary,
    /** A caption of one mark: "Rep 3: Halt, 0.84 s (0.76 to 0.92) after the whistle". */
    caption: (rep: number, what: FilmMarkName, latency: ToldTime | null): string =>
      `Rep ${t.number(rep)}: ${mark(what)}${latency === null ? '' : `, ${span(latency)} after the whistle`}`,
    chapter: (rep: number, legs: readonly ToldLeg[]): string =>
      `Rep ${t.number(rep)}: ${legs.length === 0 ? 'nothing graded' : ask.rep(legs)}`,
    clipColumns: ['film', 'in', 'out', 'rep', 'what it shows'] as readonly string[],
  };
}

const HOW_SURE =
  'Each mark may be a frame early or late: the ranges are the longest and shortest that leaves. Distances are as asked, not measured.';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const oneLine = (name: string): string => name.replace(/\s+/g, ' ').trim();

export type FilmFigureWords = ReturnType<typeof filmFigureWords>;
