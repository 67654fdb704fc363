/** One blast that is in a recording. */
export interface TrueWhistle {
  /** Half height of the blast's rise and fall, in the direct sound as it is at the microphone. */
  startS: number;
  endS: number;
  kind: 'long' | 'pip';
  pitchHz: number;
  distanceM: number;
  inBandSnrDb: number;
  whose: 'own' | 'other';
}

/** One click that is in a recording: a press with its release is one click, at the press. */
export interface TrueClick {
  timeS: number;
  snrDb: number;
}

/** What is in a recording, in order of time. */
export interface Truth {
  whistles: TrueWhistle[];
  clicks: TrueClick[];
}

/** A sound that is neither blast nor click, with the end of its echoes. */
export interface Disturbed {
  kind: string;
  startS: number;
  endS: number;
}

/** A made recording with its truth, and what else was put into it: no detector is told that, and it counts for nothing. */
export interface Recording {
  disturbed: Disturbed[];
  samples: Float32Array;
  sampleRateHz: number;
  truth: Truth;
}

/** What a detector says. */
export interface Heard {
  whistles: { startS: number; endS: number; kind: 'long' | 'pip'; pitchHz: number }[];
  clicks: { timeS: number }[];
}

/** What is judged: it is given the sound and nothing else. */
export type Detector = (samples: Float32Array, sampleRateHz: number) => Heard;
