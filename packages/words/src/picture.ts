import { GOAL_NAMES } from './goals.ts';
import type { Tongue } from './tongue.ts';
import type { Goal } from './vocabulary.ts';

type ThingKind = 'post' | 'dummy' | 'hazard' | 'jump' | 'other';
type ThingRole = 'asked' | 'other' | 'scenery';
type ObstacleOn = 'line' | 'cast' | 'recall' | 'ahead';

const COVER_LABELS = ['', 'ankle-high cover', 'knee-high cover', 'cover over her back'] as const;
const OBSTACLE_LABELS = ['', 'ditch', 'fence', 'water'] as const;

const step = (value: number): 0 | 1 | 2 | 3 => {
  const n = Math.round(value);
  return n >= 3 ? 3 : n === 2 ? 2 : n === 1 ? 1 : 0;
};

/** Words on and about the field card. */
export function pictureWords(t: Tongue) {
  const thing = (kind: ThingKind, role: ThingRole): string => {
    if (kind === 'dummy') return role === 'asked' ? t.dummy : `other ${t.dummy}`;
    return kind === 'other' ? 'marker' : kind;
  };
  return {
    /** Metres in one unit of the ruler. */
    unitM: t.unitM,
    you: 'you',
    dog: 'dog',
    halts: (distanceM: number): string => `halts at ${t.length(distanceM)}`,
    blow: (distanceM: number): string => `blow at ${t.length(distanceM)}`,
    /** What a thing is that no leg names. */
    thing,
    /** What a thing is that a leg sends the dog to: the word of the rep's sentence. */
    goal: (goal: Goal): string => GOAL_NAMES[goal],
    thingAt: (name: string, distanceM: number): string => `${name}, ${t.length(distanceM)}`,
    cover: (cover: number): string => COVER_LABELS[step(cover)],
    obstacle: (obstacle: number): string => OBSTACLE_LABELS[step(obstacle)],
    wind: (speedMPerS: number): string => `wind ${t.wind(speedMPerS)}`,
    /** A figure on the ruler; the last one carries the unit. */
    tick: (lengthM: number, last: boolean): string => (last ? t.length(lengthM) : t.bareLength(lengthM)),
    title: 'Field card',
    /** Short for north, at the tip of its needle. */
    north: 'N',
    bearing: (bearingDeg: number): string => `${t.number(Math.round(bearingDeg) % 360)}°`,
    /** One of several of a kind. */
    numbered: (name: string, number: number): string => `${name} ${t.number(number)}`,
    /** Pieces of the text that stands for the picture. */
    said: {
      line: (lengthM: number): string => `line of ${t.length(lengthM)}`,
      stop: (distanceM: number): string => `stop at ${t.length(distanceM)}`,
      whistle: (distanceM: number): string => `blow when the dog is at ${t.length(distanceM)}`,
      cast: (side: 'left' | 'right' | 'back', lengthM: number): string =>
        side === 'back' ? `then back ${t.length(lengthM)}` : `then ${side} ${t.length(lengthM)}`,
      recall: (lengthM: number): string => `recall over ${t.length(lengthM)}`,
      hunt: (radiusM: number): string => `hunt an area ${t.length(radiusM * 2)} across`,
      obstacle: (obstacle: number, on: ObstacleOn): string => {
        const name = OBSTACLE_LABELS[step(obstacle)];
        return name === '' ? '' : `${name} ${on === 'ahead' ? 'ahead' : `across the ${on}`}`;
      },
      sit: 'the dog sits waiting out there',
      handlerApart: (distanceM: number): string => `you stand ${t.length(distanceM)} from the send point`,
      nothing: 'nothing drawn',
    },
  };
}

export type PictureWords = ReturnType<typeof pictureWords>;
