import {
  type ByteStream,
  createListener,
  createRecordingCheck,
  type HeardSounds,
  learnOwnWhistle,
  openWav,
  type RecordingCheck,
  readWavSound,
  WAV_RATES_HZ,
} from '@sedgeline/engine/sound';
import { type ToldSoundNote, type ToldSoundProblem, words } from '@sedgeline/words';
import { InvalidArgumentError } from 'commander';
import { CliFailure, EXIT } from '../cli-failure.ts';
import { measuredNumber } from '../measured-number.ts';
import { readCompressedSound } from '../sound/compressed-sound.ts';
import { seenStream } from '../sound/seen-stream.ts';
import { HEAD_BYTES, promisedFlacFrames, soundKind } from '../sound/sound-kind.ts';
import { table } from '../table.ts';
import type { Terminal } from '../terminal.ts';
import { type AddCommand, print } from './command.ts';

interface Options {
  readonly json?: boolean;
  readonly ownPitchHz: readonly number[];
}

/** Below this rate the band of the whistles is cut short. */
const LOW_RATE_HZ = 16_000;
const MOST_CONFIRMED = 1000;

/** Pitches of own blasts, "2900,2930". @throws InvalidArgumentError for anything else */
function confirmedPitches(text: string): readonly number[] {
  const all = text.split(',').map((one) => measuredNumber('hertz', 500, 10_000)(one.trim()));
  if (all.length <= MOST_CONFIRMED) return all;
  throw new InvalidArgumentError(`expected ${MOST_CONFIRMED} pitches at most.`);
}

const rounded = (value: number, decimals: number) => Number(value.toFixed(decimals));

/** `listen FILE`: long blasts, pips and clicks in a recording, with start, end and pitch. */
export const addListen: AddCommand = (program, terminal, finish) => {
  program
    .command('listen')
    .description('whistle blasts and clicks in a recording (WAV, FLAC, Opus, MP3; - for standard input)')
    .argument('<file>', 'the recording')
    .option('--json', 'print one JSON document')
    .option('--own-pitch-hz <hz,hz,...>', 'pitches of blasts known to be yours', confirmedPitches, [])
    .action(async (file: string, options: Options) => {
      const { listen } = words();
      const heard = await heardIn(terminal, file, options);
      const notes = heard.notes.map((note) => ({ ...note, sentence: listen.note(note) }));
      const { whistles, clicks, durationS, sampleRateHz, channels } = heard;
      const answer = { whistles, clicks, durationS, sampleRateHz, channels, notes };
      print(terminal, options, answer, () => {
        const rows = [
          ...whistles.map((one) => ({ atS: one.startS, row: listen.blast(one) })),
          ...clicks.map(({ timeS }) => ({ atS: timeS, row: listen.click(timeS) })),
        ].sort((a, b) => a.atS - b.atS);
        const { when, what, lasts, pitch } = listen.columns;
        return [
          rows.length === 0
            ? ''
            : `${table(
                [when, what, lasts, pitch],
                rows.map(({ row }) => row),
              )}\n`,
          `${listen.summary(whistles.length, clicks.length, durationS)}\n`,
          ...notes.map(({ sentence }) => `${sentence}\n`),
        ].join('');
      });
      finish(EXIT.done);
    });
};

function notUsable(file: string, problem: ToldSoundProblem): CliFailure {
  const message = words().listen.problem(problem);
  const name = file === '-' ? 'standard input' : file;
  return new CliFailure({ code: problem.code, message, exit: EXIT.badInput, file: name });
}

/** A recording on its way through the ear: the rate is told with the first samples. */
function createEar(file: string, options: Options) {
  const own = learnOwnWhistle(options.ownPitchHz);
  const check = createRecordingCheck();
  const all: HeardSounds = { whistles: [], clicks: [] };
  let listener: ReturnType<typeof createListener> | null = null;
  const keep = ({ whistles, clicks }: HeardSounds) => {
    all.whistles.push(...whistles);
    all.clicks.push(...clicks);
  };
  return {
    take(samples: Float32Array, sampleRateHz: number): void {
      if (sampleRateHz < WAV_RATES_HZ.least || sampleRateHz > WAV_RATES_HZ.most)
        throw notUsable(file, { code: 'WAV_RATE', sampleRateHz });
      listener ??= createListener({ sampleRateHz, own });
      check.take(samples);
      keep(listener.push(samples));
    },
    finish(): { all: HeardSounds; check: RecordingCheck } {
      if (listener === null) throw notUsable(file, { code: 'WAV_EMPTY' });
      keep(listener.finish());
      return { all, check: check.result() };
    },
  };
}

/** The sound of a file handed to the ear, and what is to be said of it. */
async function listenTo(stream: ByteStream, file: string, ear: ReturnType<typeof createEar>) {
  const seen = seenStream(stream, HEAD_BYTES);
  const kind = soundKind(seen.head);
  const notes: ToldSoundNote[] = [];
  const missing = (frames: number, sampleRateHz: number) => {
    if (frames > 0) notes.push({ code: 'sound-missing', missingS: rounded(frames / sampleRateHz, 3) });
  };
  if (kind === 'other') {
    const opened = openWav(seen.stream);
    if (!opened.ok) throw notUsable(file, opened.problem);
    const { sampleRateHz, channels, frameBytes } = opened.format;
    const { frames, missingBytes, notNumbers } = readWavSound(seen.stream, opened.format, (samples) =>
      ear.take(samples, sampleRateHz),
    );
    missing(Math.floor(missingBytes / frameBytes), sampleRateHz);
    if (notNumbers > 0) notes.push({ code: 'not-numbers', count: notNumbers });
    return { frames, sampleRateHz, channels, notes };
  }
  const { frames, sampleRateHz, channels, damaged } = await readCompressedSound(kind, seen.stream, ear.take);
  if (frames === 0) throw notUsable(file, { code: 'SOUND_DAMAGED' });
  const promised = kind === 'flac' ? promisedFlacFrames(seen.head) : null;
  if (promised !== null) missing(promised - frames, sampleRateHz);
  if (damaged > 0) notes.push({ code: 'damaged', count: damaged });
  return { frames, sampleRateHz, channels, notes };
}

const heardIn = (terminal: Terminal, file: string, options: Options) =>
  terminal.readBytes(file, async (stream) => {
    const ear = createEar(file, options);
    const { frames, sampleRateHz, channels, notes } = await listenTo(stream, file, ear);
    const { all, check } = ear.finish();
    if (check.isSilent) notes.push({ code: 'silent' });
    if (check.isClipped) notes.push({ code: 'cut-off', fullShare: rounded(check.fullShare, 4) });
    if (sampleRateHz < LOW_RATE_HZ) notes.push({ code: 'low-rate', sampleRateHz });
    return {
      whistles: all.whistles
        .sort((a, b) => a.startS - b.startS)
        .map((one) => ({
          ...one,
          startS: rounded(one.startS, 4),
          endS: rounded(one.endS, 4),
          pitchHz: rounded(one.pitchHz, 1),
          sureness: rounded(one.sureness, 3),
        })),
      clicks: all.clicks.map(({ timeS, sureness }) => ({
        timeS: rounded(timeS, 4),
        sureness: rounded(sureness, 3),
      })),
      durationS: rounded(frames / sampleRateHz, 6),
      sampleRateHz,
      channels,
      notes,
    };
  });
