import { demoKennel } from '@sedgeline/demo';
import { writeJournal } from '@sedgeline/journal';
import { EXIT } from '../cli-failure.ts';
import { wholeNumber } from '../whole-number.ts';
import { type AddCommand, print } from './command.ts';

/** `demo`: writes the invented kennel. */
export const addDemo: AddCommand = (program, terminal, finish) => {
  program
    .command('demo')
    .description('write the invented kennel: three dogs, eight months, nobody real')
    .option('--seed <n>', 'which kennel', wholeNumber, 0)
    .requiredOption('--out <journal>', 'file to write, - for standard output')
    .option('--json', 'print one JSON document')
    .action((options: { seed: number; out: string; json?: boolean }) => {
      const facts = demoKennel(options.seed);
      terminal.writeNewFile(options.out, writeJournal(facts));
      const answer = { out: options.out, seed: options.seed, facts: facts.length, invented: true };
      if (options.out !== '-') {
        print(
          terminal,
          options,
          answer,
          () => `${facts.length} facts of an invented kennel in ${options.out}\n`,
        );
      }
      finish(EXIT.done);
    });
};
