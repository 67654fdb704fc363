export { createListener, type HeardBlast, type HeardClick, type HeardSounds } from './listener.ts';
export { learnOwnWhistle, type OwnWhistle } from './own-whistle.ts';
export { createRecordingCheck, type RecordingCheck } from './recording-check.ts';
export type { ByteStream } from './wav/byte-stream.ts';
export { openWav, type WavFormat, type WavProblem } from './wav/wav-format.ts';
export { readWavSound } from './wav/wav-sound.ts';
