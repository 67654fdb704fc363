import type { StepWords } from '../steps.ts';
import type { Tongue } from '../tongue.ts';
import type { Cause, Grade } from '../vocabulary.ts';

/** So much to each side of a mean holds 90 % of a normal. */
const Z90 = 1.6449;

const WHY_LAST: Readonly<Record<Grade, string>> = {
  missed: 'Why the last miss',
  fair: 'Why the last fair one',
  good: 'Why the last good one',
};

/** Words of the sheet that says why a rep went as it did. */
export function whyScreenWords(t: Tongue, steps: StepWords) {
  return {
    name: 'Why',
    title: (dog: string, rep: number): string => `${dog}, rep ${t.number(rep)}: why?`,
    which: (dog: string, rep: number, date: string): string => `${dog}, rep ${t.number(rep)}, ${date}`,
    open: (rep: number): string => `Rep ${t.number(rep)}: why did it go so?`,
    last: (grade: Grade): string => WHY_LAST[grade],
    openLast: (skill: string, grade: Grade): string => `${skill}: ${WHY_LAST[grade].toLowerCase()}`,
    close: 'Close',
    leg: (n: number): string => `Leg ${t.number(n)}`,
    since: (rep: number | null, date: string): string =>
      rep === null ? `Against the one of ${date}` : `Against rep ${t.number(rep)} of this session`,
    columns: { what: 'What changed', before: 'Then', now: 'Now', chance: 'Chance, in 100' },
    /** The whole step, with what it may be: logits for whoever wants them. */
    step: (mean: number, sd: number): string => {
      const size = steps.phrase(mean);
      const figure = (value: number) => t.number(value, 2);
      return `All in all ${size}: ${figure(mean)} logits, may be ${figure(mean - Z90 * sd)} to ${figure(mean + Z90 * sd)}.`;
    },
    figures: 'The figures',
    rest: 'All the rest',
    odd: 'This very ask',
    sureness: 'How well it is known',
    chanceThen: 'Asked again, the one that went well',
    chanceNow: 'This one, before it was asked',
    nothingChanged: 'Nothing changed that is worth a word.',
    form: (poorInHundred: string): string =>
      `Looking back over that whole session, the day was a poor one: ${poorInHundred} in 100.`,
    given: {
      handler: 'You said: me.',
      setup: 'You said: the set-up.',
      unsure: 'You said: not sure, so it counts half.',
    } as Readonly<Partial<Record<Cause, string>>>,
    stated: 'Chances as stated from what was known before the leg.',
    noLegs: 'No leg of this rep was graded.',
    waiting: 'Going back through the record to that day.',
    gone: 'This rep is no longer in the record.',
    failed: 'That could not be worked out. The record is as it was; close this and try again.',
  };
}

export type WhyScreenWords = ReturnType<typeof whyScreenWords>;
