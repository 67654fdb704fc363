import type { Goal, RepPicture, ThingKind } from '@sedgeline/engine/ground';

type Side = 'left' | 'right' | 'back';
type ThingRole = RepPicture['things'][number]['role'];
type ObstacleOn = RepPicture['obstacles'][number]['on'];

/** What stands on a card, as texts made elsewhere: this package knows no sentence. */
export interface CardWords {
  /** Metres in one unit of the ruler. */
  readonly unitM: number;
  readonly you: string;
  readonly dog: string;
  /** Stands in the place of `dog` where the dog's name is at hand. */
  readonly dogName?: string | undefined;
  halts(distanceM: number): string;
  blow(distanceM: number): string;
  thing(kind: ThingKind, role: ThingRole): string;
  goal(goal: Goal): string;
  thingAt(name: string, distanceM: number): string;
  cover(cover: number): string;
  obstacle(obstacle: number): string;
  wind(speedMPerS: number): string;
  /** A figure on the ruler; the last one carries the unit. */
  tick(lengthM: number, last: boolean): string;
  /** Pieces of the text that stands for the picture. */
  readonly said: {
    line(lengthM: number): string;
    stop(distanceM: number): string;
    whistle(distanceM: number): string;
    cast(side: Side, lengthM: number): string;
    recall(lengthM: number): string;
    hunt(radiusM: number): string;
    obstacle(obstacle: number, on: ObstacleOn): string;
    readonly sit: string;
    handlerApart(distanceM: number): string;
    readonly nothing: string;
  };
}
