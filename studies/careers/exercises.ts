import { type Ask, PLACES, PULLS, type Skill } from './ask.ts';

/** Steps of each thing that an invented trainer can raise, easy end first (common practice, no source). */
const LADDERS = {
  distance: [8, 12, 18, 25, 35, 48, 65, 85, 110],
  way: [0.2, 0.35, 0.5, 0.65, 0.8],
  pull: [0, 1, 2, 3, 4, 5],
  place: [0, 1, 2],
  cover: [0, 0.5, 1, 2],
  distraction: [0, 1, 2, 3],
  cast: [6, 10, 15, 22, 32, 45],
  off: [0, 15, 30, 45],
  others: [0, 1, 2, 3],
  gap: [120, 80, 55, 35],
  blind: [0, 1],
  wait: [0, 3, 8, 15, 30],
  obstacle: [0, 1, 2],
} as const;
export type Thing = keyof typeof LADDERS;
export type Steps = Partial<Record<Thing, number>>;

export interface AskedLeg {
  readonly skill: Skill;
  readonly ask: Ask;
}

export interface Exercise {
  readonly name: string;
  readonly things: readonly Thing[];
  readonly legs: readonly ('cast' | Skill)[];
  /** A send that may be run with no stop. */
  readonly isSend: boolean;
  /** Session from which it is worked. */
  readonly fromSession: number;
  readonly weight: number;
}

const exercise = (
  name: string,
  weight: number,
  fromSession: number,
  legs: Exercise['legs'],
  things: readonly Thing[],
): Exercise => ({
  name,
  weight,
  fromSession,
  legs,
  things,
  isSend: legs.includes('line') || name === 'marking',
});

export const EXERCISES: readonly Exercise[] = [
  exercise(
    'straight',
    1,
    0,
    ['line'],
    ['distance', 'pull', 'place', 'cover', 'others', 'gap', 'blind', 'obstacle'],
  ),
  exercise('stopping', 5, 1, ['line', 'stop'], ['distance', 'way', 'pull', 'place', 'distraction', 'cover']),
  exercise('hands', 4, 1, ['stop', 'cast'], ['distance', 'cast', 'off', 'pull', 'others', 'distraction']),
  exercise(
    'blind',
    4,
    6,
    ['line', 'stop', 'cast', 'pickup'],
    ['distance', 'way', 'cast', 'off', 'cover', 'blind', 'gap'],
  ),
  exercise('marking', 2, 0, ['steady', 'mark', 'delivery'], ['distance', 'wait', 'pull', 'cover']),
  exercise('recall', 1, 0, ['recall'], ['distance', 'pull', 'distraction']),
  exercise('hunting', 1, 3, ['hunt', 'pickup'], ['distance', 'cover', 'pull']),
  exercise('heel', 1, 0, ['heel'], ['distraction', 'pull', 'wait']),
  exercise('leaving', 1, 2, ['leave'], ['pull', 'distance', 'distraction']),
];

/** Highest step of a thing. */
export function topOf(thing: Thing): number {
  return LADDERS[thing].length - 1;
}

const onLadder = (thing: Thing, steps: Steps): number => LADDERS[thing][steps[thing] ?? 0] ?? 0;

/** How one rep differs from the next where nothing was raised: the side, the place of the stop, a metre or two. */
export interface Variation {
  readonly side: 'left' | 'right' | 'back';
  /** Factor on distances, near 1. */
  readonly stretch: number;
  readonly windMPerS: number;
}

/** The legs of a rep, as asked. Marks and what comes after them have a thrown dummy at least. */
export function legsAsked(work: Exercise, steps: Steps, vary: Variation, clean: boolean): AskedLeg[] {
  const metres = (thing: Thing) => Math.max(5, Math.round(onLadder(thing, steps) * vary.stretch));
  const wayFraction = onLadder('way', steps);
  const pulls = work.name === 'marking' ? Math.max(3, onLadder('pull', steps)) : onLadder('pull', steps);
  const others = onLadder('others', steps);
  const base: Ask = {
    temptation: PULLS[pulls] ?? 'none',
    handlerPlace: PLACES[onLadder('place', steps)] ?? 'between',
    distraction: onLadder('distraction', steps),
  };
  const out: Ask = { otherDummies: others, gapDeg: others > 0 ? onLadder('gap', steps) : 180 };
  const field: Ask = { cover: onLadder('cover', steps), windAcrossMPerS: vary.windMPerS };
  const distanceM = metres('distance');
  const stopAt: Ask =
    work.legs.includes('line') && work.legs.includes('stop')
      ? { distanceM: Math.max(3, Math.round(distanceM * wayFraction)), wayFraction }
      : { distanceM };
  const off = onLadder('off', steps);
  const turnDeg = vary.side === 'back' ? 180 - off : 90 + off;
  const asks: Record<string, Ask> = {
    line: {
      ...base,
      ...out,
      ...field,
      distanceM,
      blind: onLadder('blind', steps) === 1,
      obstacle: onLadder('obstacle', steps),
    },
    stop: { ...base, cover: field.cover ?? 0, ...stopAt },
    cast: { ...base, ...out, ...stopAt, castM: metres('cast'), turnDeg },
    steady: { ...base, waitS: onLadder('wait', steps) },
    mark: { ...base, ...field, distanceM, waitS: onLadder('wait', steps) },
    hunt: { ...base, ...field, distanceM },
    recall: { ...base, distanceM },
    heel: { ...base, waitS: onLadder('wait', steps) },
    leave: { ...base, distanceM },
  };
  const legs = clean ? work.legs.filter((leg) => leg !== 'stop' && leg !== 'cast') : work.legs;
  return legs.map((leg) => ({
    skill: leg === 'cast' ? `cast-${vary.side}` : leg,
    ask: { ...(asks[leg] ?? { cover: field.cover ?? 0, distraction: base.distraction ?? 0 }) },
  }));
}
