/** Bytes that are read once, from first to last. */
export interface ByteStream {
  /** The next bytes: as many as are asked for, fewer at the end alone. The array may be used until the next call. */
  take(count: number): Uint8Array;
}
