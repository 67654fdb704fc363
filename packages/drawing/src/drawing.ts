import type { RepPicture } from '@sedgeline/engine/ground';

/** A place on the card, in the drawing's own units, y down. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A rectangle on the card. */
export interface Box extends Spot {
  readonly width: number;
  readonly height: number;
}

/** The card to draw on. Small cards have no labels, ruler or wind. */
export interface CardBox {
  readonly width: number;
  readonly height: number;
  readonly labels: boolean;
}

export type ThingRole = RepPicture['things'][number]['role'];
export type ThingKind = RepPicture['things'][number]['kind'];

/** One thing drawn. `at`, `from` and `to` are true places; what is only drawn longer or shorter for the eye is apart. */
export type Mark =
  | {
      readonly mark: 'line' | 'unrun' | 'recall';
      readonly from: Spot;
      readonly to: Spot;
      readonly headPath: string;
    }
  | { readonly mark: 'stop' | 'whistle'; readonly at: Spot; readonly from: Spot; readonly to: Spot }
  | {
      readonly mark: 'cast';
      readonly side: 'left' | 'right' | 'back';
      readonly from: Spot;
      readonly to: Spot;
      readonly path: string;
      readonly headPath: string;
      /** Spots along the bent arrow, close enough to keep a label off it. */
      readonly along: readonly Spot[];
    }
  | { readonly mark: 'hunt'; readonly at: Spot; readonly radius: number }
  | {
      readonly mark: 'thing';
      readonly at: Spot;
      readonly kind: ThingKind;
      readonly role: ThingRole;
      /** The dog did not see it laid. */
      readonly isUnseen: boolean;
      readonly size: number;
    }
  | {
      readonly mark: 'obstacle';
      readonly level: 1 | 2 | 3;
      /** Where it crosses the way. */
      readonly at: Spot;
      readonly from: Spot;
      readonly to: Spot;
      readonly path: string;
      readonly posts: string;
    }
  /** From where the dog is sent to what it may be sent to. */
  | { readonly mark: 'sight'; readonly to: Spot; readonly from: Spot; readonly isChosen: boolean }
  /** A wall, a track, an edge of something, along its markers. */
  | { readonly mark: 'edge'; readonly along: readonly Spot[] }
  | { readonly mark: 'chosen'; readonly at: Spot }
  | { readonly mark: 'handler'; readonly at: Spot; readonly aimDeg: number; readonly size: number }
  | { readonly mark: 'dog'; readonly at: Spot; readonly aimDeg: number; readonly size: number };

export type LabelTone = 'strong' | 'clay' | 'water' | 'note';

/** A label in its place: `box` holds the whole text, `leader` ties it to what it names. */
export interface PlacedLabel {
  readonly text: string;
  readonly tone: LabelTone;
  readonly box: Box;
  readonly anchor: 'start' | 'end';
  readonly baseline: Spot;
  readonly size: number;
  readonly leader: { readonly from: Spot; readonly to: Spot } | null;
}

export interface Tick {
  readonly y: number;
  readonly text: string | null;
}

/** A whole card, ready to be put down: nothing here knows of the screen. */
export interface RepDrawing {
  readonly box: CardBox;
  readonly metresPerUnit: number;
  readonly send: Spot;
  readonly cover: string;
  readonly marks: readonly Mark[];
  readonly ruler: {
    readonly x: number;
    readonly top: number;
    readonly foot: number;
    readonly ticks: readonly Tick[];
  } | null;
  readonly wind: { readonly at: Spot; readonly towardsDeg: number } | null;
  /** Where north is, on a drawing that has it told. */
  readonly north?: { readonly at: Spot; readonly towardsDeg: number; readonly text: string } | undefined;
  readonly labels: readonly PlacedLabel[];
}
