import type { ChanceWords } from './chances.ts';
import type { AskValue, ChangeWords } from './changes.ts';
import type { Tongue } from './tongue.ts';
import type { TradeWords } from './trade.ts';
import type { Grade, Skill } from './vocabulary.ts';
import { type ChangedFactor, factorWords } from './why-factors.ts';

/** Every verdict on a leg, in the order in which they are tried. */
export const VERDICT_CODES = [
  'handler',
  'setup',
  'too-big-a-step',
  'form',
  'bad-luck',
  'not-yet',
  'better-than-hoped',
  'as-hoped',
] as const;
export type VerdictCode = (typeof VERDICT_CODES)[number];

/** A leg and what it came to, with its figures. */
export interface ExplainedLeg {
  readonly skill: Skill;
  readonly grade: Grade;
  readonly verdict: VerdictCode;
  /** Chance of good before the leg. */
  readonly chanceBefore: number;
  /** `null` with no success before. */
  readonly step: {
    readonly chanceAtBase: number;
    readonly changed: readonly ChangedFactor<AskValue | null>[];
  } | null;
}

const TITLES: Readonly<Record<VerdictCode, string>> = {
  handler: 'Yours, not the dog’s',
  setup: 'The set-up’s, not the dog’s',
  'too-big-a-step': 'A step too many',
  form: 'One of those days',
  'bad-luck': 'Bad luck',
  'not-yet': 'Not sure yet',
  'better-than-hoped': 'Better than hoped',
  'as-hoped': 'As hoped',
};

/** What follows from a verdict: about the work, never about the dog's character. */
const MEANINGS: Readonly<Record<VerdictCode, string>> = {
  handler: 'You said it was yours, so it is not held against the dog. Ask the same again, set up better.',
  setup: 'Something got in the way, so it is not held against the dog. Ask the same again.',
  'too-big-a-step': 'Go back to what went well, and raise one thing at a time.',
  form: 'The whole session went below what was to be hoped. Keep such a day short and easy.',
  'bad-luck': 'This goes well far more often than not. Ask it again before changing anything.',
  'not-yet': 'Repeat it where it goes well, until it is sure, before asking more.',
  'better-than-hoped': 'More than was to be hoped for. Get it again before asking more.',
  'as-hoped': 'It was likely to go well, and it did.',
};

/** Things that changed and are worth a word: they moved the chance by a small part of a step (our judgement, 2026). */
const WORTH_A_WORD = 0.05;
const HARDER_SAID = 3;
const EASIER_SAID = 2;

/** Why a leg went as it did, for a handler who knows no statistics. */
export function whyWords(t: Tongue, trade: TradeWords, chances: ChanceWords, changes: ChangeWords) {
  const factors = factorWords(t, trade, changes);

  /** What changed, in words: what made it harder, what spoke for it. */
  const changed = (all: readonly ChangedFactor<AskValue | null>[]) => {
    const said = all.filter(({ logit }) => Math.abs(logit) >= WORTH_A_WORD);
    // Late and tempted are told already; their product adds nothing that a handler would say.
    const told = said.filter(({ factor }) => factor !== 'late-temptation');
    const harder = told.filter(({ logit }) => logit > 0).map(factors.phrase);
    const easier = told.filter(({ logit }) => logit < 0).map(factors.phrase);
    return { harder: harder.slice(0, HARDER_SAID), easier: easier.reverse().slice(0, EASIER_SAID) };
  };

  /** What was asked against what went well, and the two chances. */
  const against = ({ step, chanceBefore }: ExplainedLeg): string => {
    if (step === null) {
      return `Nothing of the kind had gone well before. The chance of good was ${chances.plain(chanceBefore)}.`;
    }
    const { harder, easier } = changed(step.changed);
    const favour = easier.length === 0 ? '' : ` In its favour: ${t.list(easier)}.`;
    const went = chanceWent(step.chanceAtBase, chanceBefore);
    if (harder.length === 0 && easier.length === 0) return `Much the same as one that went well. ${went}`;
    if (step.changed.reduce((sum, { logit }) => sum + logit, 0) <= 0) {
      const weighed = harder.length === 0 ? '' : ` Against it: ${t.list(harder)}.`;
      return `No harder than one that went well.${favour}${weighed} ${went}`;
    }
    return `Against the last like it that went well: ${t.list(harder)}.${favour} ${went}`;
  };

  /** The two chances, or the one where they come to the same in a hundred. */
  const chanceWent = (before: number, now: number): string =>
    chances.inHundred(before) === chances.inHundred(now)
      ? `The chance of good stayed at ${chances.plain(now)}.`
      : `The chance of good went ${chances.change(before, now)}.`;

  return {
    ...factors,
    title: (verdict: VerdictCode): string => TITLES[verdict],
    meaning: (verdict: VerdictCode): string => MEANINGS[verdict],
    against,
    /** What came of the leg: "Stop: ran on." */
    outcome: (skill: Skill, grade: Grade): string => `${trade.skill(skill)}: ${trade.gradeAt(skill, grade)}.`,
    /** All of it in one go, for a line of text: "Stop: ran on. A step too many. Against the last like it …" */
    sentence: (leg: ExplainedLeg): string =>
      `${trade.skill(leg.skill)}: ${trade.gradeAt(leg.skill, leg.grade)}. ${TITLES[leg.verdict]}. ${against(leg)}`,
  };
}

export type WhyWords = ReturnType<typeof whyWords>;
