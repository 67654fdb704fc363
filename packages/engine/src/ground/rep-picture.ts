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

/** A rep drawn from its own layout: seen from above, send point at the foot, metres, out is north. */
export interface RepPicture {
  readonly layout: Layout;
  readonly sendFrom: PlanePoint;
  readonly handlerAt: PlanePoint;
  readonly dogAt: PlanePoint;
  readonly strokes: readonly RepStroke[];
  /** Things of the layout with what the dog knows of each: seen, unseen (blind), or not the one asked for. */
  readonly things: readonly (Layout['things'][number] & {
    readonly role: 'asked' | 'asked-unseen' | 'other' | 'scenery';
  })[];
  /** Height of cover on the line, 0 to 3, and obstacle on it, 0 to 3, for drawing. */
  readonly cover: number;
  readonly obstacle: number;
  /** How far the picture reaches out from the send point, metres: the ruler's end. */
  readonly reachM: number;
}
