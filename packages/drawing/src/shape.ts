/** The colours of a drawing by what they mean; whoever draws knows their values. */
export const INKS = ['ink', 'soft', 'line', 'grass', 'card', 'sedge', 'reed', 'clay', 'water'] as const;
export type Ink = (typeof INKS)[number];

/** How a shape is put down. Ends and corners are round and nothing is filled where nothing else is said. */
export interface Paint {
  readonly stroke?: Ink;
  readonly width?: number;
  readonly dash?: string;
  readonly cap?: 'butt';
  readonly fill?: Ink | 'none';
  readonly opacity?: number;
  readonly fillOpacity?: number;
  /** The stroke lies under the fill: a rim that keeps the shape off what it crosses. */
  readonly rim?: boolean;
}

/** One element of a drawing: what SVG calls it, where it is, how it is put down. Text and children end up inside. */
export interface Shape {
  readonly tag: 'g' | 'path' | 'line' | 'circle' | 'ellipse' | 'rect' | 'text';
  /** Geometry by SVG's own names. */
  readonly at?: Readonly<Record<string, string | number>>;
  /** What can be read back from the drawing, as `data-` attributes. */
  readonly data?: Readonly<Record<string, string | number>>;
  readonly paint?: Paint;
  readonly type?: {
    readonly anchor: 'start' | 'middle' | 'end';
    readonly size: number;
    readonly weight: number;
  };
  readonly text?: string;
  readonly children?: readonly Shape[];
}

export const path = (d: string, paint?: Paint): Shape => ({
  tag: 'path',
  at: { d },
  ...(paint && { paint }),
});
export const group = (children: readonly Shape[], rest: Omit<Shape, 'tag' | 'children'> = {}): Shape => ({
  tag: 'g',
  ...rest,
  children,
});
