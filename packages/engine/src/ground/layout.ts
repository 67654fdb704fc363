/** A place on the ground's plane, metres east and north of the drawing's origin. */
export interface PlanePoint {
  readonly eastM: number;
  readonly northM: number;
}

export type ThingKind = 'post' | 'dummy' | 'hazard' | 'jump' | 'other';

/** One thing that lies or stands on the ground. */
export interface Thing extends PlanePoint {
  readonly thing: string;
  readonly kind: ThingKind;
  readonly how?: 'placed' | 'thrown' | 'launched' | undefined;
  readonly label?: string | undefined;
  /** The dog did not see it put there. */
  readonly blind?: boolean | undefined;
}

/** What is put where: the body of a `layout-drawn` fact without its identity. */
export interface Layout {
  readonly handlerAt: PlanePoint;
  /** Where the dog is sent from; left out: at the handler. */
  readonly sendFrom?: PlanePoint | undefined;
  readonly things: readonly Thing[];
  readonly windFromDeg?: number | undefined;
  readonly windMPerS?: number | undefined;
}
