export {
  type CallCandidate,
  type JoinedCalls,
  type Joining,
  joinCalls,
  SURE_FROM,
} from './joining/join-calls.ts';
export { type CallKind, type SoundCall, soundCalls } from './joining/sound-calls.ts';
export type { WantedCall } from './joining/wanted-call.ts';
export { createListener, type HeardBlast, type HeardClick, type HeardSounds } from './listener.ts';
export { learnOwnWhistle, type OwnWhistle } from './own-whistle.ts';
export { createRecordingCheck, type RecordingCheck } from './recording-check.ts';
export type { ByteStream } from './wav/byte-stream.ts';
export { openWav, WAV_RATES_HZ, type WavFormat, type WavProblem } from './wav/wav-format.ts';
export { readWavSound } from './wav/wav-sound.ts';
