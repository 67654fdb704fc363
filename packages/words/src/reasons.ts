import type { ChanceWords } from './chances.ts';
import type { AskValue, ChangeWords } from './changes.ts';
import type { Tongue } from './tongue.ts';
import type { TradeWords } from './trade.ts';
import type { Skill } from './vocabulary.ts';

/** Every code of a reason why a rep, a break or the end is suggested. */
export const REASON_CODES = [
  'known-first',
  'nothing-known-yet',
  'easy-end',
  'one-thing-raised',
  'hold-here',
  'one-thing-lowered',
  'easier-after-miss',
  'two-misses-end-this',
  'repeat-set-up-better',
  'run-clean',
  'vary-where-the-stop-comes',
  'weaker-side',
  'back-to-known',
  'new-ground-step-down',
  'beyond-what-was-tried',
  'break-due',
  'finish-well',
  'end-on-good',
  'long-enough',
  'stop-for-today',
  'as-planned',
  'easier-than-planned',
  'planned-line-ended',
  'plan-done',
] as const;
export type ReasonCode = (typeof REASON_CODES)[number];

/** A reason with its figures, any of which may be missing. */
export interface Reason {
  readonly code: ReasonCode;
  readonly skill?: Skill | undefined;
  readonly field?: string | undefined;
  readonly from?: AskValue;
  readonly to?: AskValue;
  readonly chanceBefore?: number | undefined;
  readonly chanceNow?: number | undefined;
  readonly count?: number | undefined;
  readonly minutes?: number | undefined;
  readonly share?: number | undefined;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A plain sentence for every reason, from its figures; a figure that is missing leaves its part of the sentence out. */
export function reasonWords(t: Tongue, trade: TradeWords, chances: ChanceWords, changes: ChangeWords) {
  /** "Stop on the whistle: easier", or "Easier" where no skill is named. */
  const about = (skill: Skill | undefined, rest: string): string =>
    skill ? `${trade.skillInWords(skill)}: ${rest}` : capital(rest);
  const step = (r: Reason): string =>
    r.chanceBefore !== undefined && r.chanceNow !== undefined
      ? `, ${chances.change(r.chanceBefore, r.chanceNow)}`
      : r.chanceNow !== undefined
        ? `, ${chances.plain(r.chanceNow)}`
        : '';
  const change = (r: Reason): string => changes.phrase(r.field, r.from, r.to);
  const minutes = (n: number | undefined): string =>
    n === undefined ? '' : t.count(Math.round(n), 'minute', 'minutes');
  /** A share as "1 in 4", where that is a way to say it: between 1 in 20 and 1 in 2. */
  const oneIn = (share: number | undefined): string =>
    share !== undefined && share >= 0.05 && share <= 0.5
      ? ` About 1 send in ${t.number(1 / share)} does this dog good.`
      : '';

  const sentences: Readonly<Record<ReasonCode, (r: Reason) => string>> = {
    'known-first': (r) => `Something known first${step(r)}.`,
    'nothing-known-yet': (r) => about(r.skill, 'nothing is known yet, so this begins at the easy end.'),
    'easy-end': (r) => about(r.skill, `the easy end${step(r)}.`),
    'one-thing-raised': (r) => `One thing more: ${change(r)}${step(r)}.`,
    'hold-here': (r) => `Stay at this${step(r)}: get it sure before more is asked.`,
    'one-thing-lowered': (r) => `One thing less: ${change(r)}${step(r)}.`,
    'easier-after-miss': (r) => `Easier after a miss: ${change(r)}${step(r)}. Get it right, then try again.`,
    'two-misses-end-this': (r) =>
      about(r.skill, 'two misses running, so leave it for today and do something known.'),
    'repeat-set-up-better': () => 'That was not the dog. The same again, set up better, with no fuss.',
    'run-clean': (r) =>
      `Straight through, no whistle, so that the dog keeps going out hard.${oneIn(r.share)}`,
    'vary-where-the-stop-comes': () =>
      'The stop comes in another place than lately, so that the dog stops on the whistle and not by the place.',
    'weaker-side': (r) =>
      `The weaker side${r.skill ? `: ${trade.skill(r.skill).toLowerCase()}` : ''}${step(r)}.`,
    'back-to-known': (r) => `Back to something known${step(r)}.`,
    'new-ground-step-down': (r) =>
      r.field === undefined
        ? 'New ground: a step down from home.'
        : `New ground, so a step down: ${change(r)}.`,
    'beyond-what-was-tried': (r) => `Beyond what was tried before: ${change(r)}${step(r)}.`,
    'break-due': (r) =>
      r.count === undefined && r.minutes === undefined
        ? 'Time for a break.'
        : `Time for a break: ${t.list([
            ...(r.count === undefined ? [] : [t.count(r.count, 'rep', 'reps')]),
            ...(r.minutes === undefined || (r.minutes < 1 && r.count !== undefined)
              ? []
              : [minutes(r.minutes)]),
          ])} without one.`,
    'finish-well': (r) => `Finish on something sure${step(r)}.`,
    'end-on-good': () => 'That went well: a good place to end.',
    'long-enough': (r) =>
      // Many reps in hardly any time: their number is what there was enough of.
      r.minutes !== undefined && (r.minutes >= 1 || r.count === undefined)
        ? `${minutes(r.minutes)} is long enough.`
        : r.count === undefined
          ? 'That is long enough.'
          : `${t.count(r.count, 'rep', 'reps')} is enough.`,
    'stop-for-today': () => 'Stop for today: more would only teach the misses.',
    'as-planned': (r) =>
      r.count === undefined ? 'As planned.' : `As planned: rep ${t.number(r.count)} of the plan.`,
    'easier-than-planned': (r) => about(r.skill, `easier than planned${step(r)}, as today has gone.`),
    'planned-line-ended': (r) =>
      r.skill
        ? `What was planned with ${trade.skill(r.skill).toLowerCase()} is left out for today.`
        : 'What was planned of it is left out for today.',
    'plan-done': () => 'The plan is done, and it ended well.',
  };

  return {
    sentence: (reason: Reason): string => capital(sentences[reason.code](reason)),
    /** The first reason alone is shown on the card; all of them where there is room. */
    all: (reasons: readonly Reason[]): readonly string[] => reasons.map((r) => capital(sentences[r.code](r))),
  };
}

export type ReasonWords = ReturnType<typeof reasonWords>;
