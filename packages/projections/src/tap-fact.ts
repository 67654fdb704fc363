/** What a tap adds to the journal: kind and body; the device gives identity, time and clock. */
export interface TapFact {
  readonly kind: string;
  readonly body: Readonly<Record<string, unknown>>;
  /** Where it belongs in the journal's order, for what is put in afterwards; left out: now. */
  readonly place?: { readonly ms: number; readonly counter: number } | undefined;
}
