import type { EncodedPacket, EncodedPacketSink } from 'mediabunny';

/** One frame of a film: from when to when it is shown, by the film's own time stamps, seconds. */
export interface FilmFrame {
  readonly startS: number;
  /** When the next frame begins; `null` for the last. */
  readonly nextS: number | null;
  /** When the frame before began; `null` for the first. */
  readonly beforeS: number | null;
}

/** What a film's index tells, whether the browser can show its pictures or not. */
export interface FilmIndex {
  /** Name of the pictures' coding (`avc`, `hevc`, `vp9` ...); `null` where the index names none that is known. */
  readonly coding: string | null;
  readonly hasSound: boolean;
  /** Where its last frame ends, seconds. */
  readonly lengthS: number;
  /** The frame shown at a moment; the first one for any moment before it. */
  frameAt(atS: number): Promise<FilmFrame>;
  close(): void;
}

/** Why a file has no index that can be read. */
export type IndexFault = 'unreadable' | 'no-picture';

/** How far in the order of decoding a frame may stand from its place in the order of showing: the most that H.264 and HEVC allow. */
const REORDERED_FRAMES = 16;
/** Less than the finest time stamp of any film: timescales go up to about a million ticks a second. */
const TICK_S = 1e-7;
const ONLY_TIMES = { metadataOnly: true };

/**
 * Reads the index of a film: MP4, MOV and WebM. The file is read in small pieces where they are wanted, never as a whole, and nothing is decoded.
 * The library that knows the formats is loaded with the first film.
 */
export async function readFilmIndex(file: Blob): Promise<FilmIndex | IndexFault> {
  const {
    Input,
    BlobSource,
    EncodedPacketSink: PacketSink,
    MP4,
    QTFF,
    WEBM,
    MATROSKA,
  } = await import('mediabunny');
  const input = new Input({ source: new BlobSource(file), formats: [MP4, QTFF, WEBM, MATROSKA] });
  try {
    const track = await input.getPrimaryVideoTrack();
    if (track === null) {
      input.dispose();
      return 'no-picture';
    }
    const sink = new PacketSink(track);
    const lengthS = await track.computeDuration();
    const first = await sink.getFirstPacket(ONLY_TIMES);
    if (first === null) throw new RangeError('film: expected at least one frame, got none');
    return {
      coding: await track.getCodec(),
      hasSound: (await input.getPrimaryAudioTrack()) !== null,
      lengthS,
      frameAt: (atS) => frameAt(sink, atS),
      close: () => input.dispose(),
    };
  } catch {
    input.dispose();
    return 'unreadable';
  }
}

async function frameAt(sink: EncodedPacketSink, atS: number): Promise<FilmFrame> {
  const shown = (await sink.getPacket(atS + TICK_S, ONLY_TIMES)) ?? (await sink.getFirstPacket(ONLY_TIMES))!;
  const before = await sink.getPacket(shown.timestamp - TICK_S, ONLY_TIMES);
  const next = await nextShown(sink, shown);
  return { startS: shown.timestamp, nextS: next?.timestamp ?? null, beforeS: before?.timestamp ?? null };
}

/**
 * The frame that is shown after another. Frames are stored in the order in which they are decoded, so the one stored next may be shown much
 * later: any later one is taken, and from there the frames are walked back in the order of showing.
 */
async function nextShown(sink: EncodedPacketSink, shown: EncodedPacket): Promise<EncodedPacket | null> {
  let next: EncodedPacket | null = null;
  let stored: EncodedPacket | null = shown;
  for (let n = 0; n <= REORDERED_FRAMES && stored !== null && next === null; n++) {
    stored = await sink.getNextPacket(stored, ONLY_TIMES);
    if (stored !== null && stored.timestamp > shown.timestamp) next = stored;
  }
  next ??= await sink.getPacket(Number.POSITIVE_INFINITY, ONLY_TIMES);
  while (next !== null && next.timestamp > shown.timestamp) {
    const earlier: EncodedPacket | null = await sink.getPacket(next.timestamp - TICK_S, ONLY_TIMES);
    if (earlier === null || earlier.timestamp <= shown.timestamp) return next;
    next = earlier;
  }
  return null;
}
