import { type Ask, HANDLER_PLACES, type Skill, TEMPTATIONS } from './ask.ts';
import type { LegContext } from './leg.ts';

/** Least and greatest value of the numeric fields of an ask, as in the journal's contract. */
export const ASK_RANGES = {
  distanceM: [0, 400],
  wayFraction: [0, 1],
  cover: [0, 3],
  distraction: [0, 3],
  turnDeg: [0, 180],
  castM: [0, 150],
  otherDummies: [0, 6],
  gapDeg: [0, 180],
  waitS: [0, 300],
  obstacle: [0, 3],
  windAcrossMPerS: [0, 15],
  crew: [0, 12],
} as const satisfies Partial<Record<keyof Ask, readonly [number, number]>>;

/** The easy end of every field of an ask, for a skill: what an absent field means. */
export function easyAsk(skill: Skill): { readonly [F in keyof Ask]-?: NonNullable<Ask[F]> } {
  return skill === 'cast-back' ? EASY_BACK : EASY_OTHER;
}

const EASY_OTHER = {
  distanceM: 5,
  wayFraction: 0.1,
  temptation: 'none',
  handlerPlace: 'between',
  cover: 0,
  distraction: 0,
  turnDeg: 90,
  castM: 5,
  otherDummies: 0,
  gapDeg: 180,
  blind: false,
  waitS: 0,
  obstacle: 0,
  windAcrossMPerS: 0,
  crew: 0,
} as const;
const EASY_BACK = { ...EASY_OTHER, turnDeg: 180 } as const;

/** The moment of the easy reference ask: nothing new, nothing tired, nothing lapsed. */
export const EASY_CONTEXT: LegContext = {
  earlierSessionsOnGround: null,
  repsSinceBreak: 0,
  daysSinceWorked: 0,
  stopsRunning: 0,
  ageMonths: null,
};

function outside(field: string, expected: string, got: unknown): RangeError {
  return new RangeError(`${field}: expected ${expected}, got ${String(got)}`);
}

type Ranged = keyof typeof ASK_RANGES;

function checkRange(field: Ranged, value: number | undefined): void {
  if (value === undefined) return;
  const [least, greatest] = ASK_RANGES[field];
  if (!(value >= least && value <= greatest)) throw outside(field, `${least}..${greatest}`, value);
}

/**
 * Checks an ask against the journal's ranges.
 * @throws RangeError naming the field that is outside its range
 */
export function checkAsk(ask: Ask): void {
  // Field by field, not in a loop over names: this runs for every leg of every replay.
  checkRange('distanceM', ask.distanceM);
  checkRange('wayFraction', ask.wayFraction);
  checkRange('cover', ask.cover);
  checkRange('distraction', ask.distraction);
  checkRange('turnDeg', ask.turnDeg);
  checkRange('castM', ask.castM);
  checkRange('otherDummies', ask.otherDummies);
  checkRange('gapDeg', ask.gapDeg);
  checkRange('waitS', ask.waitS);
  checkRange('obstacle', ask.obstacle);
  checkRange('windAcrossMPerS', ask.windAcrossMPerS);
  checkRange('crew', ask.crew);
  const { temptation, handlerPlace, blind } = ask;
  if (temptation !== undefined && !TEMPTATIONS.includes(temptation)) {
    throw outside('temptation', TEMPTATIONS.join(' / '), temptation);
  }
  if (handlerPlace !== undefined && !HANDLER_PLACES.includes(handlerPlace)) {
    throw outside('handlerPlace', HANDLER_PLACES.join(' / '), handlerPlace);
  }
  if (blind !== undefined && typeof blind !== 'boolean') throw outside('blind', 'true or false', blind);
}

/**
 * Checks what the program adds to an ask.
 * @throws RangeError naming the field that is negative or no number
 */
export function checkContext(context: LegContext): void {
  const { earlierSessionsOnGround, repsSinceBreak, daysSinceWorked, stopsRunning, ageMonths } = context;
  const count = (field: string, value: number) => {
    if (!(value >= 0 && value < Infinity)) throw outside(field, '>= 0', value);
  };
  if (earlierSessionsOnGround !== null) count('earlierSessionsOnGround', earlierSessionsOnGround);
  count('repsSinceBreak', repsSinceBreak);
  count('daysSinceWorked', daysSinceWorked);
  count('stopsRunning', stopsRunning);
  if (ageMonths !== null) count('ageMonths', ageMonths);
}
