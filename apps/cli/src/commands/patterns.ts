import { patternsAnswer } from '@sedgeline/projections';
import { words } from '@sedgeline/words';
import { EXIT } from '../cli-failure.ts';
import { known, openJournal } from '../open-journal.ts';
import { type AddCommand, type AnswerOptions, answering, print } from './command.ts';

interface Options extends AnswerOptions {
  readonly dog: string;
}

/** `patterns JOURNAL --dog D`: what shows over months, each with its figures. */
export const addPatterns: AddCommand = (program, terminal, finish) => {
  const command = program
    .command('patterns')
    .description('say what shows over months: seven patterns, each with its probability and counts')
    .argument('<journal>', 'JSON Lines file, - for standard input')
    .requiredOption('--dog <dog>', 'which dog');
  answering(command, true).action((path: string, options: Options) => {
    const { kennel, beside } = openJournal(terminal, path, options);
    const dog = known('dog', options.dog, kennel.record.dogs.keys(), path, beside.setAside);
    const { patterns: catalogue, chances } = words();
    const found = patternsAnswer(kennel.record, kennel.timeline(), dog, catalogue.sentence);
    if (found === null) throw new RangeError(`dog: expected one of the record's, got ${dog}`);
    print(terminal, options, { ...found, ...beside }, () =>
      found.patterns
        .map(({ pattern, probability, sentence }) => {
          const chance = `${chances.inHundred(probability)} in 100 that it is so`;
          return `${catalogue.title(pattern)} (${chance})\n  ${sentence}\n`;
        })
        .join(''),
    );
    finish(EXIT.done);
  });
};
