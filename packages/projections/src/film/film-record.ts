import type { FilmMarkName, OrderKey } from '@sedgeline/journal';

/** Something that is seen in one frame of a film. */
export interface FilmMark {
  readonly mark: string;
  /** The film under whose id it was made. */
  readonly film: string;
  readonly rep: string;
  readonly what: FilmMarkName;
  /** Time of the frame on the film, seconds. */
  readonly atS: number;
  /** The moment lies within this of the frame's time, on either side, seconds. */
  readonly frameS: number;
  /** Found by a program in the sound, and not by hand. */
  readonly heard: boolean;
}

/** A file that holds a film: what tells it from others. */
export interface FilmFileSaid {
  readonly name: string;
  readonly bytes: number;
  /** Of all the file's bytes, as `docs/journal.md` has it; `null` while nobody has worked it out. */
  readonly contentHash: string | null;
}

/** A film of a session as the record finally has it. The film itself is in no record. */
export interface FilmRecord extends FilmFileSaid {
  readonly film: string;
  readonly session: string;
  readonly orderKey: OrderKey;
  /** Every id under which it was linked: two devices may have linked the same file. */
  readonly ids: readonly string[];
  /** Every file that was said to hold it; the one said last is its own name, size and hash. */
  readonly files: readonly FilmFileSaid[];
  readonly lengthS: number | null;
  /** When its first frame was taken, as the file says. */
  readonly startsAtMs: number | null;
  /** False once it was said to be no film of this session. */
  readonly isLinked: boolean;
  /** Marks that stand, by their time on the film. */
  readonly marks: readonly FilmMark[];
  /** Marks that were taken off, the last first. */
  readonly takenOff: readonly FilmMark[];
}
