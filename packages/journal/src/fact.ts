/** Identity of a fact in the journal. */
export type FactId = string & { readonly __fact: unique symbol };

/**
 * One thing that happened, never edited: a correction is another fact. Unknown kinds and unknown fields
 * (here and in `body`) are kept and handed on.
 */
export interface Fact {
  readonly id: string;
  readonly kind: string;
  /** ISO 8601 with offset or `Z`. */
  readonly at: string;
  readonly body: Readonly<Record<string, unknown>>;
  /** Hybrid logical clock `MS-CCCC-DEVICE`. */
  readonly clock?: string | undefined;
  readonly device?: string | undefined;
  readonly by?: string | undefined;
  readonly [unknownField: string]: unknown;
}
