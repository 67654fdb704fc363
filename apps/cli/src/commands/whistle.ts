import {
  carriesFarM,
  carryingTo,
  FARTHEST_CARRYING_M,
  HEARD_HZ,
  haltInterval90M,
  learnedReaction,
  overrunInterval90M,
  type StopConditions,
  type StopPoint,
  stopAtPlace,
  usualSound,
  usualStopConditions,
  usualStopSpread,
  type WhistleSound,
  whistleCautions,
} from '@sedgeline/engine/whistle';
import { words } from '@sedgeline/words';
import { InvalidArgumentError } from 'commander';
import { EXIT } from '../cli-failure.ts';
import { measuredNumber } from '../measured-number.ts';
import { table } from '../table.ts';
import { type AddCommand, print } from './command.ts';

interface Options {
  readonly json?: boolean;
  readonly speed: number;
  readonly distance: number;
  readonly reactionHandler: number;
  readonly reactionDog: number;
  readonly reactions: readonly number[];
  readonly acceleration: number;
  readonly braking: number;
  readonly airC: number;
  readonly humidity: number;
  readonly windMps: number;
  readonly levelDb: number;
  readonly noiseDb: number;
  readonly pitchHz: number;
  readonly cover: number;
}

const seconds = measuredNumber('seconds', 0, 10);

/** Reactions that were timed, "0.4,0.55". @throws InvalidArgumentError for anything else */
function timedReactions(text: string): readonly number[] {
  const all = text.split(',').map((one) => measuredNumber('seconds', 0.01, 60)(one.trim()));
  if (all.length <= 1000) return all;
  throw new InvalidArgumentError('expected 1,000 reactions at most.');
}

/** `whistle --speed MPS --distance M`: when to decide and to blow, where the dog halts, and whether it hears. */
export const addWhistle: AddCommand = (program, terminal, finish) => {
  const { reactionHandlerS, reactionDogS, accelerationMPerS2, brakingMPerS2, airC } = usualStopConditions;
  const { humidityPct, levelDbSpl, noiseDb, pitchHz } = usualSound;
  const mPerS2 = measuredNumber('metres a second squared', 0.1, 40);
  program
    .command('whistle')
    .description('when to blow for a stop at a place, how far the dog runs on, and whether it hears')
    .requiredOption('--speed <mps>', 'running speed', measuredNumber('metres a second', 0.1, 25))
    .requiredOption('--distance <m>', 'where it should halt', measuredNumber('metres', 0, 2000))
    .option('--json', 'print one JSON document')
    .option('--reaction-handler <s>', 'from deciding to blowing', seconds, reactionHandlerS)
    .option('--reaction-dog <s>', 'from hearing to braking', seconds, reactionDogS)
    .option('--reactions <s,s,...>', 'reactions of this dog that were timed', timedReactions, [])
    .option('--acceleration <mps2>', 'how the dog gets going', mPerS2, accelerationMPerS2)
    .option('--braking <mps2>', 'how it brakes', mPerS2, brakingMPerS2)
    .option('--air-c <c>', 'air temperature', measuredNumber('degrees Celsius', -60, 60), airC)
    .option('--humidity <pct>', 'relative humidity', measuredNumber('per cent', 0, 100), humidityPct)
    .option('--wind-mps <w>', 'wind', measuredNumber('metres a second', 0, 60), 0)
    .option('--level-db <l>', 'level at 1 m', measuredNumber('decibels', 0, 150), levelDbSpl)
    .option('--noise-db <l>', 'noise about that pitch', measuredNumber('decibels', -20, 150), noiseDb)
    .option('--pitch-hz <f>', 'pitch', measuredNumber('hertz', HEARD_HZ.low, HEARD_HZ.high), pitchHz)
    .option('--cover <n>', 'cover on the way, 0 to 3', measuredNumber('cover', 0, 3), 0)
    .action((options: Options) => {
      const catalogue = words().whistle;
      const { answer, told, taken, cautions } = workedOut(options);
      const said = cautions.map((one) => ({ ...one, sentence: catalogue.caution(one) }));
      print(terminal, options, { ...answer, cautions: said, taken }, () =>
        [
          table([catalogue.columns.what, catalogue.columns.figure], catalogue.rows(told)),
          '\n',
          ...said.map(({ sentence }) => `${sentence}\n`),
          `\n${catalogue.taken(taken)}\n`,
        ].join(''),
      );
      finish(EXIT.done);
    });
};

function workedOut(options: Options) {
  const reaction = learnedReaction(options.reactions, Math.max(0.01, options.reactionDog));
  const at: StopConditions = {
    runSpeedMPerS: options.speed,
    reactionHandlerS: options.reactionHandler,
    reactionDogS: options.reactions.length === 0 ? options.reactionDog : reaction.medianS,
    accelerationMPerS2: options.acceleration,
    brakingMPerS2: options.braking,
    airC: options.airC,
  };
  const sound: WhistleSound = {
    levelDbSpl: options.levelDb,
    pitchHz: options.pitchHz,
    noiseDb: options.noiseDb,
    airC: options.airC,
    humidityPct: options.humidity,
    cover: options.cover,
  };
  const stop = stopAtPlace(options.distance, at);
  const spread = { ...usualStopSpread(at.reactionDogS), reactionDog: reaction };
  const overrun = overrunInterval90M(stop.blowWhenDogAtM, at, spread);
  const halt = haltIntervalOf(stop, at, spread, overrun);
  const carrying = carryingTo(stop.dogHearsAtM, sound);
  const carriesToM = carriesFarM(sound);
  const { levelAtDogDb, marginDb, carries } = carrying;
  const { airC: _, reactionDogS, reactionHandlerS, ...run } = at;
  return {
    answer: {
      soundDelayS: stop.soundDelayS,
      decideWhenDogAtM: stop.decideWhenDogAtM,
      blowWhenDogAtM: stop.blowWhenDogAtM,
      dogHearsAtM: stop.dogHearsAtM,
      dogHaltsAtM: stop.dogHaltsAtM,
      overrunM: stop.overrunM,
      interval90: { overrunM: overrun, dogHaltsAtM: halt },
      levelAtDogDb,
      marginDb,
      carries,
      carriesToM,
    },
    told: {
      ...stop,
      levelAtDogDb,
      marginDb,
      carriesToM,
      overrunInterval90M: overrun,
      haltInterval90M: halt,
      farthestM: FARTHEST_CARRYING_M,
    },
    taken: {
      ...run,
      reactionHandlerS,
      reactionDogS,
      airC: options.airC,
      humidityPct: options.humidity,
      windMPerS: options.windMps,
      levelDb: options.levelDb,
      noiseDb: options.noiseDb,
      pitchHz: options.pitchHz,
      cover: options.cover,
      measured: reaction.measured,
    },
    cautions: whistleCautions(stop, carrying, sound, options.windMps),
  };
}

/** Where the handler must decide before the send there is no dog to see, and the whistle is blown at its own moment. */
function haltIntervalOf(
  stop: StopPoint,
  at: StopConditions,
  spread: ReturnType<typeof usualStopSpread>,
  overrun: readonly [number, number],
): readonly [number, number] {
  if (stop.decideBeforeSendS === 0) return haltInterval90M(stop.decideWhenDogAtM, at, spread);
  return [stop.blowWhenDogAtM + overrun[0], stop.blowWhenDogAtM + overrun[1]];
}
