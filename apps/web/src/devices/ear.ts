import {
  createListener,
  createRecordingCheck,
  type HeardSounds,
  type OwnWhistle,
} from '@sedgeline/engine/sound';

/** Something about a sound that is to be told, though it could be used. */
export type EarNote =
  | 'silent'
  /** The loudest parts are cut off. */
  | 'cut-off'
  /** The file breaks off before its end. */
  | 'breaks-off'
  /** Recorded at so low a rate that high whistles are not in it. */
  | 'low-rate';

/** What was heard in a whole sound. */
export interface Listened {
  readonly lengthS: number;
  readonly whistles: HeardSounds['whistles'];
  readonly clicks: HeardSounds['clicks'];
  readonly notes: readonly EarNote[];
}

/** Below this rate the band of the whistles is cut short. */
const LOW_RATE_HZ = 16_000;

const thousandth = (value: number) => Math.round(1000 * value) / 1000;

/** An ear on one sound: samples in, blasts and clicks out as soon as they are known. Holds what was heard and nothing of the sound. */
export function createEar(sampleRateHz: number, own: OwnWhistle | null) {
  const listener = createListener({ sampleRateHz, own });
  const check = createRecordingCheck();
  const whistles: HeardSounds['whistles'] = [];
  const clicks: HeardSounds['clicks'] = [];
  let samples = 0;
  const keep = (heard: HeardSounds): HeardSounds => {
    const rounded = {
      whistles: heard.whistles.map((one) => ({
        ...one,
        startS: thousandth(one.startS),
        endS: thousandth(one.endS),
        pitchHz: Math.round(10 * one.pitchHz) / 10,
        sureness: thousandth(one.sureness),
      })),
      clicks: heard.clicks.map(({ timeS, sureness }) => ({
        timeS: thousandth(timeS),
        sureness: thousandth(sureness),
      })),
    };
    whistles.push(...rounded.whistles);
    clicks.push(...rounded.clicks);
    return rounded;
  };
  return {
    /** Seconds of sound so far. */
    get lengthS() {
      return samples / sampleRateHz;
    },
    get isSilent() {
      return check.result().isSilent;
    },
    push(piece: Float32Array): HeardSounds {
      samples += piece.length;
      check.take(piece);
      return keep(listener.push(piece));
    },
    finish(breaksOff: boolean): Listened {
      keep(listener.finish());
      const { isSilent, isClipped } = check.result();
      const notes: EarNote[] = [];
      if (breaksOff) notes.push('breaks-off');
      if (isSilent) notes.push('silent');
      if (isClipped) notes.push('cut-off');
      if (sampleRateHz < LOW_RATE_HZ) notes.push('low-rate');
      return {
        lengthS: samples / sampleRateHz,
        whistles: whistles.toSorted((a, b) => a.startS - b.startS),
        clicks: clicks.toSorted((a, b) => a.timeS - b.timeS),
        notes,
      };
    },
  };
}

export type Ear = ReturnType<typeof createEar>;
