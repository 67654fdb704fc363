import {
  createListener,
  createRecordingCheck,
  type HeardSounds,
  learnOwnWhistle,
  openWav,
  readWavSound,
} from '@sedgeline/engine/sound';
import { type ToldSoundNote, type ToldSoundProblem, words } from '@sedgeline/words';
import { InvalidArgumentError } from 'commander';
import { CliFailure, EXIT } from '../cli-failure.ts';
import { measuredNumber } from '../measured-number.ts';
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
    .description('whistle blasts and clicks in a recording (WAV; - for standard input)')
    .argument('<file>', 'the recording')
    .option('--json', 'print one JSON document')
    .option('--own-pitch-hz <hz,hz,...>', 'pitches of blasts known to be yours', confirmedPitches, [])
    .action((file: string, options: Options) => {
      const { listen } = words();
      const heard = heardIn(terminal, file, options);
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

function heardIn(terminal: Terminal, file: string, options: Options) {
  const own = learnOwnWhistle(options.ownPitchHz);
  return terminal.readBytes(file, (stream) => {
    const opened = openWav(stream);
    if (!opened.ok) throw notUsable(file, opened.problem);
    const { sampleRateHz, channels, frameBytes } = opened.format;
    const listener = createListener({ sampleRateHz, own });
    const check = createRecordingCheck();
    const all: HeardSounds = { whistles: [], clicks: [] };
    const keep = ({ whistles, clicks }: HeardSounds) => {
      all.whistles.push(...whistles);
      all.clicks.push(...clicks);
    };
    const { frames, missingBytes, notNumbers } = readWavSound(stream, opened.format, (samples) => {
      check.take(samples);
      keep(listener.push(samples));
    });
    keep(listener.finish());
    if (frames === 0) throw notUsable(file, { code: 'WAV_EMPTY' });
    const { isSilent, isClipped, fullShare } = check.result();
    const notes: ToldSoundNote[] = [];
    if (missingBytes > 0)
      notes.push({
        code: 'sound-missing',
        missingS: rounded(Math.floor(missingBytes / frameBytes) / sampleRateHz, 3),
      });
    if (isSilent) notes.push({ code: 'silent' });
    if (isClipped) notes.push({ code: 'cut-off', fullShare: rounded(fullShare, 4) });
    if (notNumbers > 0) notes.push({ code: 'not-numbers', count: notNumbers });
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
}
