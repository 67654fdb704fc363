import type { Tongue } from './tongue.ts';

/** Something about a recording that its listener should know, though it was heard. */
export type ToldSoundNote =
  | { readonly code: 'sound-missing'; readonly missingS: number }
  | { readonly code: 'silent' }
  | { readonly code: 'cut-off'; readonly fullShare: number }
  | { readonly code: 'not-numbers'; readonly count: number }
  | { readonly code: 'damaged'; readonly count: number }
  | { readonly code: 'low-rate'; readonly sampleRateHz: number };

/** Why a file can't be listened to. */
export type ToldSoundProblem =
  | { readonly code: 'NOT_WAV'; readonly begins: string }
  | { readonly code: 'WAV_CUT' | 'WAV_NO_FORMAT' | 'WAV_EMPTY' | 'SOUND_DAMAGED' }
  | { readonly code: 'WAV_CODING'; readonly tag: number; readonly bits: number }
  | { readonly code: 'WAV_RATE'; readonly sampleRateHz: number }
  | { readonly code: 'WAV_CHANNELS'; readonly channels: number };

export interface ToldBlast {
  readonly startS: number;
  readonly endS: number;
  readonly kind: 'long' | 'pip';
  readonly pitchHz: number;
  readonly whose: 'own' | 'other' | null;
}

const AS_WAV = 'save or convert it as WAV (PCM, 16 bit) and listen to that';

/** What other files begin with. */
const KINDS: readonly (readonly [RegExp, string])[] = [
  [/^OggS/, 'an Ogg file that holds no Opus'],
  [/^\u00ff[\u00e2-\u00ff]/, 'an AAC file'],
  [/^FORM/, 'an AIFF file'],
  [/^RIFX/, 'a WAV file with its bytes the other way round'],
  [/^caff/, 'a CAF file'],
  [/^.E\u00df\u00a3/, 'a WebM or Matroska file'],
  [/^[^ -~]{3}/, 'an MP4 or M4A file, most likely'],
];

/** Words of what was heard in a recording. */
export function listenWords(t: Tongue) {
  const seconds = (s: number, decimals = 2): string => `${t.number(s, decimals)} s`;
  const moment = (atS: number): string => {
    const minutes = Math.floor(atS / 60);
    return `${minutes}:${(atS - 60 * minutes).toFixed(2).padStart(5, '0')}`;
  };
  return {
    columns: { when: 'at', what: 'heard', lasts: 'lasts', pitch: 'pitch' },
    blast: ({ startS, endS, kind, pitchHz, whose }: ToldBlast): readonly string[] => [
      moment(startS),
      `${kind === 'long' ? 'long blast' : 'pip'}${whose === 'other' ? ', another whistle' : ''}`,
      seconds(endS - startS),
      `${t.number(pitchHz)} Hz`,
    ],
    click: (timeS: number): readonly string[] => [moment(timeS), 'click', '', ''],
    /** How many of each, in a recording of that length. */
    summary: (blasts: number, clicks: number, durationS: number): string =>
      `${t.count(blasts, 'blast', 'blasts')} and ${t.count(clicks, 'click', 'clicks')} in ${moment(durationS)}. Heard by a program: look before you count on one.`,
    note: (note: ToldSoundNote): string => {
      switch (note.code) {
        case 'sound-missing':
          return `The file ends ${seconds(note.missingS)} before its header says; what is there was listened to.`;
        case 'silent':
          return 'Every sample is nought: the recording is silent. Check the microphone and whether the app may use it.';
        case 'cut-off':
          return `${t.number(100 * note.fullShare, 1)} % of the samples are at full scale: the sound is cut off at its loudest, and blasts there may be missed. Put the phone further from the whistle.`;
        case 'not-numbers':
          return `${t.count(note.count, 'sample is', 'samples are')} no number and counted as silence.`;
        case 'damaged':
          return `${t.count(note.count, 'piece', 'pieces')} of the file could not be read and ${note.count === 1 ? 'is' : 'are'} left out: times after that may be early.`;
        case 'low-rate':
          return `At ${t.number(note.sampleRateHz)} samples a second nothing above ${t.number(0.45 * note.sampleRateHz)} Hz is heard: many whistles lie higher. Record at 16,000 or more.`;
      }
    },
    problem: (problem: ToldSoundProblem): string => {
      switch (problem.code) {
        case 'NOT_WAV': {
          const kind = KINDS.find(([begins]) => begins.test(problem.begins))?.[1];
          return `it is ${kind ?? 'no WAV file'}; ${AS_WAV}`;
        }
        case 'WAV_CUT':
          return 'it ends before its sound begins; copy it again from where it was recorded';
        case 'SOUND_DAMAGED':
          return 'none of its sound can be read; copy it again from where it was recorded';
        case 'WAV_EMPTY':
          return 'there is no sound after its header; copy it again from where it was recorded';
        case 'WAV_NO_FORMAT':
          return `it does not say how its sound is written; ${AS_WAV}`;
        case 'WAV_CODING':
          return `its sound is in a coding that is not read (${problem.tag}, ${problem.bits} bit); ${AS_WAV}`;
        case 'WAV_RATE':
          return `it says ${problem.sampleRateHz} samples a second, and 8000 to 192000 are read; ${AS_WAV}`;
        case 'WAV_CHANNELS':
          return `it says ${problem.channels} channels; ${AS_WAV}`;
      }
    },
  };
}
