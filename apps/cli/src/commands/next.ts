import type { PlannedLeg, Reason } from '@sedgeline/engine/session';
import { nextAnswer } from '@sedgeline/projections';
import { words } from '@sedgeline/words';
import { EXIT } from '../cli-failure.ts';
import { known, openJournal } from '../open-journal.ts';
import { wholeNumber } from '../whole-number.ts';
import { type AddCommand, type AnswerOptions, answering, print } from './command.ts';

interface Options extends AnswerOptions {
  readonly session: string;
  readonly seed: number;
}

/** `next JOURNAL --session S`: what to ask next, and why. */
export const addNext: AddCommand = (program, terminal, finish) => {
  const command = program
    .command('next')
    .description('say what to ask next, and why')
    .argument('<journal>', 'JSON Lines file, - for standard input')
    .requiredOption('--session <session>', 'which session')
    .option('--seed <n>', 'which order of chance', wholeNumber, 0);
  answering(command, true).action((path: string, options: Options) => {
    const { kennel, atMs, beside } = openJournal(terminal, path, options);
    const ids = kennel.record.sessions.map(({ session }) => session).toReversed();
    const session = known('session', options.session, ids, path);
    const next = kennel.next(session, atMs, options.seed);
    if (next === null) throw new RangeError(`session: expected one of the record's, got ${session}`);
    const catalogue = words();
    const say = (reasons: readonly Reason[], legs: readonly PlannedLeg[]): string =>
      [...(legs.length > 0 ? [catalogue.ask.rep(legs)] : []), ...catalogue.reasons.all(reasons)].join(' ');
    const answer = { ...nextAnswer(next, say), ...beside };
    print(terminal, options, answer, () => `${answer.sentence}\n`);
    finish(EXIT.done);
  });
};
