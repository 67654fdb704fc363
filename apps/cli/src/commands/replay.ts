import { replayAnswer } from '@sedgeline/projections';
import { EXIT } from '../cli-failure.ts';
import { known, openJournal } from '../open-journal.ts';
import { table } from '../table.ts';
import { type AddCommand, type AnswerOptions, answering, print } from './command.ts';

interface Options extends AnswerOptions {
  readonly dog?: string;
}

const figure = (value: number | null) => (value === null ? 'not known' : value.toFixed(4));

/** `replay JOURNAL`: what would have been said before each leg, and how right it was. */
export const addReplay: AddCommand = (program, terminal, finish) => {
  const command = program
    .command('replay')
    .description("state every leg's chance from what came before it, and score it")
    .argument('<journal>', 'JSON Lines file, - for standard input')
    .option('--dog <dog>', 'this dog only');
  answering(command, false).action((path: string, options: Options) => {
    const { kennel, beside } = openJournal(terminal, path, options);
    const dog = options.dog === undefined ? null : known('dog', options.dog, kennel.record.dogs.keys(), path);
    const answer = { ...replayAnswer(kennel, dog), ...beside };
    print(terminal, options, answer, () => {
      const { scores, calibration } = answer;
      const rows = [
        ['stated', scores],
        ['always-average', scores.baselines['always-average']],
        ['recent-average', scores.baselines['recent-average']],
      ] as const;
      return [
        table(
          ['chances', 'legs', 'log loss', 'Brier'],
          rows.map(([name, row]) => [name, String(row.legs), figure(row.logLoss), figure(row.brier)]),
        ),
        '\n',
        table(
          ['from', 'to', 'legs', 'stated', 'happened', '95 % interval'],
          calibration.map((row) => [
            row.from.toFixed(1),
            row.to.toFixed(1),
            String(row.legs),
            row.stated.toFixed(3),
            row.happened.toFixed(3),
            row.interval95.map((end) => end.toFixed(3)).join(' to '),
          ]),
        ),
      ].join('');
    });
    finish(EXIT.done);
  });
};
