import type { Tongue } from '../tongue.ts';

/** Why a voice note could not be made, kept or played. */
export type VoiceFault = 'refused' | 'no-microphone' | 'cannot' | 'not-kept' | 'elsewhere' | 'too-short';

const FAULTS: Readonly<Record<VoiceFault, string>> = {
  refused:
    'The microphone was refused. Allow it for this page in the browser’s settings; a written note works as ever.',
  'no-microphone': 'No microphone was found on this device.',
  cannot: 'This browser cannot record sound here. A written note works as ever.',
  'not-kept': 'The device would not keep the sound: nothing was noted. Free some room and say it again.',
  elsewhere: 'The sound lies on the device that heard it, not on this one.',
  'too-short': 'Nothing was heard: nothing was noted.',
};

/** Words of voice notes. */
export function voiceWords(t: Tongue) {
  const seconds = (s: number): string => `${t.number(Math.max(1, Math.round(s)))} s`;
  return {
    title: 'Voice note',
    about: (rep: number): string => `On rep ${t.number(rep)}. The sound stays on this device.`,
    noRep: 'After the first rep there is something to speak of.',
    start: 'Say it',
    stop: (s: number): string => `Keep it, ${seconds(s)}`,
    listening: 'Listening.',
    kept: 'Voice note kept.',
    dropped: 'Voice note thrown away.',
    play: (s: number): string => `Hear it, ${seconds(s)}`,
    drop: 'Throw it away',
    list: 'Voice notes',
    fault: (fault: VoiceFault): string => FAULTS[fault],
  };
}

export type VoiceWords = ReturnType<typeof voiceWords>;
