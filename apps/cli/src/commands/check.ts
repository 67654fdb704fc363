import { checkJournal } from '@sedgeline/journal';
import { EXIT, failureLine } from '../cli-failure.ts';
import { table } from '../table.ts';
import { type AddCommand, print } from './command.ts';

/** `check JOURNAL`: everything that is in a journal, and everything that is wrong with it. */
export const addCheck: AddCommand = (program, terminal, finish) => {
  program
    .command('check')
    .description('look through a journal and name every bad line')
    .argument('<journal>', 'JSON Lines file, - for standard input')
    .option('--json', 'print one JSON document')
    .action((path: string, options: { json?: boolean }) => {
      const answer = checkJournal(terminal.readFile(path));
      print(terminal, options, answer, () => {
        const kinds = Object.entries(answer.kinds).map(([kind, count]) => [kind, String(count)]);
        const lines = [...answer.errors, ...answer.warnings].map(
          ({ line, code, field, message }) => `${path}:${line}: ${code} ${field}: ${message}\n`,
        );
        return [
          table(['kind', 'facts'], kinds),
          `\n${answer.facts} facts, ${answer.unknown} of unknown kinds, ${answer.repeats} repeats\n`,
          ...lines,
        ].join('');
      });
      const count = answer.errors.length;
      if (count === 0) return finish(EXIT.done);
      const first = answer.errors[0];
      const message = `${count} ${count === 1 ? 'error' : 'errors'}; the answer names each by its line`;
      const code = 'BAD_LINES';
      terminal.err(`${failureLine({ code, message, exit: EXIT.badInput, file: path, line: first?.line })}\n`);
      finish(EXIT.badInput);
    });
};
