/** From the beginning of 1904, from which these files count, to that of 1970, seconds (ISO/IEC 14496-12, 8.2.2). */
const EPOCH_S = 2_082_844_800;
const LONGEST_WALK = 64;

/**
 * When an MP4 or MOV file says that it was made, milliseconds since 1970; `null` where it does not say, or is of another kind. Reads the
 * headers of its boxes and the film's own header (`moov/mvhd`; ISO/IEC 14496-12, 4.2 and 8.2.2), a few bytes each.
 */
export async function filmTakenAt(file: Blob): Promise<number | null> {
  const film = await boxIn(file, 0, file.size, 'moov');
  const header = film === null ? null : await boxIn(file, film.from, film.to, 'mvhd');
  if (header === null) return null;
  const view = new DataView(await file.slice(header.from, header.from + 12).arrayBuffer());
  if (view.byteLength < 12) return null;
  const sinceS = view.getUint8(0) === 1 ? Number(view.getBigUint64(4)) : view.getUint32(4);
  const ms = (sinceS - EPOCH_S) * 1000;
  return sinceS === 0 || ms < 0 || !Number.isSafeInteger(ms) ? null : ms;
}

/** Where the content of the first box of a kind lies between two places of a file. */
async function boxIn(
  file: Blob,
  start: number,
  end: number,
  kind: string,
): Promise<{ readonly from: number; readonly to: number } | null> {
  let at = start;
  for (let n = 0; n < LONGEST_WALK && at + 8 <= end; n++) {
    const view = new DataView(await file.slice(at, at + 16).arrayBuffer());
    if (view.byteLength < 8) return null;
    const isLong = view.getUint32(0) === 1 && view.byteLength === 16;
    const size = isLong ? Number(view.getBigUint64(8)) : view.getUint32(0) || end - at;
    const head = isLong ? 16 : 8;
    const name = String.fromCharCode(...[4, 5, 6, 7].map((place) => view.getUint8(place)));
    if (name === kind) return { from: at + head, to: Math.min(end, at + size) };
    if (size < head) return null;
    at += size;
  }
  return null;
}
