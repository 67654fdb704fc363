import { openWav } from '@sedgeline/engine/sound';
import type { AudioSample } from 'mediabunny';

/** Why nothing can be heard in a file. */
export type SoundFileFault =
  /** No film or sound of a kind that is known, or broken from its beginning. */
  | { readonly code: 'unreadable' }
  | { readonly code: 'no-sound' }
  /** This browser can't decode it; `coding` names how the sound is written, where that is known. */
  | { readonly code: 'cant-decode'; readonly coding: string | null }
  | { readonly code: 'bad-rate'; readonly rateHz: number };

/** A file with sound in it, read piece by piece. */
export interface SoundFile {
  readonly sampleRateHz: number;
  /** As the file says; `null` where it does not. */
  readonly lengthS: number | null;
  /**
   * The sound, all channels mixed into one by their mean, from second 0 of the file's own time: what begins before is left out and what is missing
   * is silence, so that the place of a sample is its time. Ends early, with `cut` called, where the file breaks off.
   */
  pieces(cut: () => void): AsyncGenerator<Float32Array>;
  close(): void;
}

/** The rates that the listener takes, hertz. */
const RATES_HZ = [8000, 192_000] as const;
/** Time stamps are rounded: what lies within this of its place is there. */
const IN_PLACE_S = 0.003;
const SILENCE_PIECE_S = 1;
/** A hole longer than this is a broken time stamp and no pause (our judgement, 2026). */
const LONGEST_HOLE_S = 3600;

/** Opens a film or a sound. Only its index is read; the library that knows the formats is loaded with the first one. */
export async function openSoundFile(file: Blob): Promise<SoundFile | SoundFileFault> {
  const bunny = await import('mediabunny');
  const { Input, BlobSource, AudioSampleSink, MP4, QTFF, WEBM, MATROSKA, MP3, WAVE, OGG, FLAC, ADTS } = bunny;
  const formats = [MP4, QTFF, WEBM, MATROSKA, MP3, WAVE, OGG, FLAC, ADTS];
  const input = new Input({ source: new BlobSource(file), formats });
  const fault = (one: SoundFileFault): SoundFileFault => {
    input.dispose();
    return one;
  };
  try {
    const track = await input.getPrimaryAudioTrack();
    if (track === null) return fault({ code: 'no-sound' });
    const rateHz = await track.getSampleRate();
    if (!(rateHz >= RATES_HZ[0] && rateHz <= RATES_HZ[1])) return fault({ code: 'bad-rate', rateHz });
    if (!(await track.canDecode())) return fault({ code: 'cant-decode', coding: await track.getCodec() });
    const lengthS = (await promisedByWav(file)) ?? (await track.getDurationFromMetadata());
    const sink = new AudioSampleSink(track);
    return {
      sampleRateHz: rateHz,
      lengthS,
      pieces: (cut) => inPlace(sink.samples(), rateHz, cut),
      close: () => input.dispose(),
    };
  } catch {
    return fault({ code: 'unreadable' });
  }
}

/** The sound of a WAV file begins within so many bytes, whichever program wrote it (our judgement, 2026). */
const WAV_HEAD_BYTES = 65_536;

/** How long a WAV file says that it is: the library tells how much is there. `null` of any other file, and where it is left open. */
async function promisedByWav(file: Blob): Promise<number | null> {
  const head = new Uint8Array(await file.slice(0, WAV_HEAD_BYTES).arrayBuffer());
  let at = 0;
  const opened = openWav({
    take: (count) => {
      const part = head.subarray(at, at + count);
      at += part.length;
      return part;
    },
  });
  if (!opened.ok || opened.format.promisedBytes === null) return null;
  const { promisedBytes, frameBytes, sampleRateHz } = opened.format;
  return promisedBytes / frameBytes / sampleRateHz;
}

async function* inPlace(
  samples: AsyncGenerator<AudioSample>,
  rateHz: number,
  cut: () => void,
): AsyncGenerator<Float32Array> {
  let written = 0;
  try {
    for await (const sample of samples) {
      const mono = mixed(sample);
      const at = Math.round(sample.timestamp * rateHz);
      sample.close();
      const away = at - written;
      if (Math.abs(away) > IN_PLACE_S * rateHz) {
        if (away > LONGEST_HOLE_S * rateHz) return cut();
        for (let left = away; left > 0; left -= SILENCE_PIECE_S * rateHz) {
          const silence = new Float32Array(Math.min(left, SILENCE_PIECE_S * rateHz));
          written += silence.length;
          yield silence;
        }
      }
      const late = away < -IN_PLACE_S * rateHz ? Math.min(mono.length, -away) : 0;
      const piece = mono.subarray(late);
      written += piece.length;
      if (piece.length > 0) yield piece;
    }
  } catch {
    // What was decoded before the file broke off stands.
    cut();
  }
}

function mixed(sample: AudioSample): Float32Array {
  const { numberOfFrames, numberOfChannels } = sample;
  const mono = new Float32Array(numberOfFrames);
  const plane = new Float32Array(numberOfFrames);
  for (let planeIndex = 0; planeIndex < numberOfChannels; planeIndex++) {
    sample.copyTo(plane, { planeIndex, format: 'f32-planar' });
    for (let n = 0; n < numberOfFrames; n++) mono[n] = mono[n]! + plane[n]! / numberOfChannels;
  }
  return mono;
}
