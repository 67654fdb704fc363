import type { Layout, PlanePoint } from './layout.ts';

/** One stroke of a rep, in metres on the layout's plane: what every drawing of a rep is made from. */
export type RepStroke =
  | { readonly kind: 'line'; readonly from: PlanePoint; readonly to: PlanePoint; readonly lengthM: number }
  /** The way the dog does not run because it is stopped and sent elsewhere. */
  | { readonly kind: 'unrun'; readonly from: PlanePoint; readonly to: PlanePoint }
  | { readonly kind: 'stop'; readonly at: PlanePoint; readonly distanceM: number }
  | { readonly kind: 'whistle'; readonly at: PlanePoint; readonly distanceM: number }
  | {
      readonly kind: 'cast';
      readonly side: 'left' | 'right' | 'back';
      readonly from: PlanePoint;
      readonly to: PlanePoint;
      readonly lengthM: number;
    }
  | { readonly kind: 'recall'; readonly from: PlanePoint; readonly to: PlanePoint; readonly lengthM: number }
  | { readonly kind: 'hunt'; readonly at: PlanePoint; readonly radiusM: number }
  | { readonly kind: 'sit'; readonly at: PlanePoint };

/**
 * What a leg sends the dog to, by what the dog knows of it: a blind was not seen, a memory was seen earlier, a mark was
 * seen to fall.
 */
export type Goal = 'blind' | 'memory' | 'mark' | 'game' | 'post';

/** A ditch, a fence or water, on the way of the leg that asks for it. */
export interface RepObstacle {
  /** 1 a strip or ditch, 2 a fence or jump, 3 water to cross; fractions go to the nearer. */
  readonly level: number;
  /** The way it lies across; `ahead` where the dog is sent nowhere, and it lies before what draws it. */
  readonly on: 'line' | 'cast' | 'recall' | 'ahead';
  readonly from: PlanePoint;
  readonly to: PlanePoint;
}

/** A rep drawn from its own layout: seen from above, send point at the foot, metres, out is north. */
export interface RepPicture {
  readonly layout: Layout;
  readonly sendFrom: PlanePoint;
  readonly handlerAt: PlanePoint;
  readonly dogAt: PlanePoint;
  readonly strokes: readonly RepStroke[];
  /**
   * Things of the layout, each with whether it is what the rep is about, and what the leg that sends the dog there calls
   * it; `null` where no leg says.
   */
  readonly things: readonly (Layout['things'][number] & {
    readonly role: 'asked' | 'other' | 'scenery';
    readonly goal: Goal | null;
  })[];
  /** Height of cover on the ground, 0 to 3. */
  readonly cover: number;
  readonly obstacles: readonly RepObstacle[];
  /** How far the picture reaches out from the send point, metres: the ruler's end. */
  readonly reachM: number;
}
