import { whyAnswer } from '@sedgeline/projections';
import { type Words, words } from '@sedgeline/words';
import { CliFailure, EXIT } from '../cli-failure.ts';
import { known, type OpenJournal, openJournal } from '../open-journal.ts';
import { table } from '../table.ts';
import { type AddCommand, type AnswerOptions, answering, print } from './command.ts';

interface Options extends AnswerOptions {
  readonly rep: string;
}

type Answer = NonNullable<ReturnType<typeof whyAnswer>>;

/** The rep, if it stands. @throws CliFailure (3): struck, or unknown, naming what there is, the newest first */
function knownRep({ kennel, beside }: OpenJournal, id: string, path: string): string {
  const { sessions } = kennel.record;
  const struck = sessions.flatMap(({ struckReps }) => struckReps).some(({ rep }) => rep === id);
  if (struck) {
    const message = `rep ${id} was struck out: it counts as never recorded; give another rep`;
    throw new CliFailure({ code: 'UNKNOWN_REP', message, exit: EXIT.badInput, file: path, field: 'rep' });
  }
  const there = sessions.toReversed().flatMap(({ reps }) => reps.toReversed().map(({ rep }) => rep));
  return known('rep', id, there, path, beside.setAside);
}

/** `why JOURNAL --rep R`: why a rep went as it did. */
export const addWhy: AddCommand = (program, terminal, finish) => {
  const command = program
    .command('why')
    .description('say why a rep went as it did: what changed since the last success, and how much that was')
    .argument('<journal>', 'JSON Lines file, - for standard input')
    .requiredOption('--rep <rep>', 'which rep');
  answering(command, false).action((path: string, options: Options) => {
    const open = openJournal(terminal, path, options);
    const rep = knownRep(open, options.rep, path);
    const found = whyAnswer(open.kennel, rep);
    if (found === null) throw new RangeError(`rep: expected one of the record's, got ${rep}`);
    const answer = { ...found, ...open.beside };
    print(terminal, options, answer, () => inWords(answer, words()));
    finish(EXIT.done);
  });
};

/** Rounded first, so that no row says -0.00. */
const twoDecimals = (value: number): string => (Math.round(value * 100) / 100 + 0).toFixed(2);

function inWords(answer: Answer, catalogue: Words): string {
  const { whySheet, time } = catalogue;
  const head = `${whySheet.which(answer.dogName, answer.repNumber, time.date(Date.parse(answer.at), 'UTC'))}\n\n`;
  if (answer.legs.length === 0) return `${head}${whySheet.noLegs}\n`;
  return `${head}${answer.legs.map((leg) => legInWords(leg, answer, catalogue)).join('\n')}\n${whySheet.stated}\n`;
}

function legInWords(
  leg: Answer['legs'][number],
  { form }: Answer,
  { why, whySheet, chances }: Words,
): string {
  const { chanceAtBase, stretch, stretchSd, changed, odd, sureness } = leg;
  const step = chanceAtBase === null ? null : { chanceAtBase, changed };
  const said = [
    why.sentence({ ...leg, step }),
    why.meaning(leg.verdict),
    ...(leg.verdict === 'form' ? [whySheet.form(chances.inHundred(form.poorProbability))] : []),
  ].join(' ');
  const { since } = leg;
  if (since === null || stretch === null || stretchSd === null) return `${said}\n`;
  // What went as hoped needs no table.
  if (leg.verdict === 'as-hoped') return `${said}\n`;
  const { columns } = whySheet;
  const part = (chance: number | undefined) => (chance === undefined ? '' : why.part(chance));
  const rows = changed.map(({ factor, from, to, logit, chance }) => [
    why.factor(factor),
    why.value(factor, from),
    why.value(factor, to),
    twoDecimals(logit),
    why.part(chance),
  ]);
  const others = [
    [whySheet.odd, '', '', '', part(odd?.chance)],
    [whySheet.sureness, '', '', '', part(sureness?.chance)],
  ];
  const head = [columns.what, `${columns.before} (${since.rep})`, columns.now, 'logits', columns.chance];
  return `${said}\n${whySheet.step(stretch, stretchSd)}\n\n${table(head, [...rows, ...others])}`;
}
