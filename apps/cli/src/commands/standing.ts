import { standingAnswer } from '@sedgeline/projections';
import { words } from '@sedgeline/words';
import { EXIT } from '../cli-failure.ts';
import { known, openJournal } from '../open-journal.ts';
import { table } from '../table.ts';
import { type AddCommand, type AnswerOptions, answering, print } from './command.ts';

interface Options extends AnswerOptions {
  readonly dog: string;
}

/** `standing JOURNAL --dog D`: what a dog can do, and how sure that is. */
export const addStanding: AddCommand = (program, terminal, finish) => {
  const command = program
    .command('standing')
    .description('say what a dog can do, and how sure that is')
    .argument('<journal>', 'JSON Lines file, - for standard input')
    .requiredOption('--dog <dog>', 'which dog');
  answering(command, true).action((path: string, options: Options) => {
    const { kennel, atMs, beside } = openJournal(terminal, path, options);
    const dog = known('dog', options.dog, kennel.record.dogs.keys(), path);
    const answer = { ...standingAnswer(kennel, dog, atMs), ...beside };
    const { chances, trade, dog: say } = words();
    print(terminal, options, answer, () =>
      table(
        ['skill', 'legs', 'easy', 'usual', 'far', ''],
        (answer.skills ?? []).map((row) => [
          trade.skill(row.skill),
          String(row.legs),
          ...row.asks.map((ask) => chances.shortInterval(ask.chance, ask.interval90)),
          row.known ? '' : restsOnTold(row) ? say.told.inTable(row.legs) : 'not known yet',
        ]),
      ),
    );
    finish(EXIT.done);
  });
};

/** Whether what was told of a skill weighs more than its legs. */
function restsOnTold({ told }: { readonly told?: { readonly left: number } }): boolean {
  return told !== undefined && told.left > 0.5;
}
