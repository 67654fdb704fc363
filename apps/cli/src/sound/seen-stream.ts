import type { ByteStream } from '@sedgeline/engine/sound';

/** A stream whose first bytes are looked at and then given again. */
export function seenStream(stream: ByteStream, count: number): { head: Uint8Array; stream: ByteStream } {
  const head = stream.take(count).slice();
  let given = 0;
  return {
    head,
    stream: {
      take(wanted) {
        const left = head.subarray(given, given + wanted);
        given += left.length;
        if (left.length === 0) return stream.take(wanted);
        if (left.length === wanted) return left;
        const more = stream.take(wanted - left.length);
        const both = new Uint8Array(left.length + more.length);
        both.set(left);
        both.set(more, left.length);
        return both;
      },
    },
  };
}
