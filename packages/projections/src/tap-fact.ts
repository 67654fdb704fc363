/** What a tap adds to the journal: kind and body; the device gives identity, time and clock. */
export interface TapFact {
  readonly kind: string;
  readonly body: Readonly<Record<string, unknown>>;
}
