import { type Ask, checkAsk, SKILLS, type Skill } from '@sedgeline/engine/ability';
import { chanceAnswer } from '@sedgeline/projections';
import { words } from '@sedgeline/words';
import { Option } from 'commander';
import { CliFailure, EXIT } from '../cli-failure.ts';
import { known, openJournal } from '../open-journal.ts';
import { table } from '../table.ts';
import { type AddCommand, type AnswerOptions, answering, print } from './command.ts';

interface Options extends AnswerOptions {
  readonly dog: string;
  readonly skill: Skill;
  readonly ask: string;
  readonly ground?: string;
}

/** The ask given on the command line. @throws CliFailure (3) naming the field that is not good */
function readAsk(text: string): Ask {
  const notGood = (message: string, field = 'ask') =>
    new CliFailure({ code: 'ASK_NOT_GOOD', message: `--ask: ${message}`, exit: EXIT.badInput, field });
  let ask: unknown;
  try {
    ask = JSON.parse(text);
  } catch {
    throw notGood(`expected JSON such as {"distanceM":20}, got ${text}`);
  }
  if (typeof ask !== 'object' || ask === null || Array.isArray(ask)) {
    throw notGood(`expected an object in braces, got ${text}`);
  }
  try {
    checkAsk(ask);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw notGood(error.message, `ask.${error.message.split(':')[0]}`);
  }
  return ask;
}

/** `chance JOURNAL --dog D --skill K --ask JSON`: the chance of one leg, with its parts. */
export const addChance: AddCommand = (program, terminal, finish) => {
  const command = program
    .command('chance')
    .description('state the chance of one leg')
    .argument('<journal>', 'JSON Lines file, - for standard input')
    .requiredOption('--dog <dog>', 'which dog')
    .addOption(new Option('--skill <skill>', 'which skill').choices(SKILLS).makeOptionMandatory())
    .requiredOption('--ask <json>', 'the ask, such as {"distanceM":20,"temptation":"placed-dummy"}')
    .option('--ground <ground>', 'on which ground');
  answering(command, true).action((path: string, options: Options) => {
    const ask = readAsk(options.ask);
    const { kennel, atMs, beside } = openJournal(terminal, path, options);
    const dog = known('dog', options.dog, kennel.record.dogs.keys(), path);
    const ground =
      options.ground === undefined
        ? null
        : known('ground', options.ground, kennel.record.grounds.keys(), path);
    const answer = { ...chanceAnswer(kennel, { dog, skill: options.skill, ask, ground, atMs }), ...beside };
    const { chances } = words();
    print(terminal, options, answer, () =>
      [
        `good ${chances.withInterval(answer.chance.good, answer.interval90.good)}\n`,
        `not missed ${chances.withInterval(1 - answer.chance.missed, answer.interval90.notMissed)}\n`,
        `from ${answer.legs} legs at this skill\n\n`,
        table(
          ['part', 'logits'],
          answer.because.map(({ factor, logit }) => [factor, logit.toFixed(2)]),
        ),
      ].join(''),
    );
    finish(EXIT.done);
  });
};
