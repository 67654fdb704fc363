import { EXPECTATION, SHARES, SIZES } from '../../packages/engine/src/ability/patterns/sizes.ts';
import type { Pattern } from '../careers/pattern.ts';
import { keepsWanted, type PatternScore } from './judge-detector.ts';

/** What each pattern is, where a claim begins, and how few legs are too few: from the engine's own table. */
const WHAT: Readonly<Record<Pattern, string>> = {
  'expects-the-whistle': `chance of hanging back or stopping unasked on a clean send where 1 send in 3 is clean | over ${100 * EXPECTATION.matters} in 100 | ${EXPECTATION.need} clean sends`,
  'one-sided': `left against right at equal asks | ${SIZES['one-sided'].matters} logits either way | ${SIZES['one-sided'].need} casts a side`,
  'only-at-home': `what wholly new ground costs | ${SIZES['only-at-home'].matters} logits | ${SIZES['only-at-home'].need} legs on new and on known ground`,
  'distance-wall': `a step down at a distance, beside what each doubling costs | ${SIZES['distance-wall'].matters} logits | ${SIZES['distance-wall'].need} legs beyond and short of it`,
  'tires-late': `what four more reps cost past the eighth without a break | ${SIZES['tires-late'].matters} logits | ${SIZES['tires-late'].need} legs late and fresh`,
  'late-whistle': `share of stops put down to the handler | ${100 * SHARES['late-whistle'].matters} in 100 | ${SHARES['late-whistle'].need} stops`,
  'too-big-steps': `share of steps up that are over 1.2 logits | ${100 * SHARES['too-big-steps'].matters} in 100 | ${SHARES['too-big-steps'].need} steps up`,
};

const inHundred = (count: number, { careers }: PatternScore) => Math.round((100 * count) / careers);

/** The page of the study: what is claimed when, and how often that was right. */
export function patternsPage(
  ours: readonly PatternScore[],
  raw: readonly PatternScore[],
  seed: number,
): string {
  const careers = ours[0]!.careers;
  const rows = ours.map(
    (score, n) =>
      `| ${score.pattern} | ${inHundred(score.found, score)} | ${inHundred(score.claimed, score)} | ${keepsWanted(score) ? 'yes' : 'no'} | ${inHundred(score.foundAtFive, score)} | ${inHundred(raw[n]!.found, raw[n]!)} | ${inHundred(raw[n]!.claimed, raw[n]!)} |`,
  );
  return `# Patterns over months

Seven things are looked for in a dog's record. Each is an effect with a posterior of its own. It is claimed ("looks like") when the
probability that it is larger than a stated size is over 0.8, "may be" from 0.5; prior odds are 1 to 9,
of a weaker side 1 to 4, since many dogs have one. Where the record is too thin the
answer is "can't say yet", with what is lacking. A pattern is a sentence about the work, with its figures; never about a dog's character.

| pattern | what is measured | claimed past | can't say under |
|---|---|---|---|
${ours.map(({ pattern }) => `| ${pattern} | ${WHAT[pattern]} |`).join('\n')}

The sizes are our judgement, 2026 (common practice, no source), in one table: \`packages/engine/src/ability/patterns/sizes.ts\`. What a
handler would want to be told of is about twice as large; the careers below have it at that size (\`studies/careers/pattern.ts\`).

## How it is found

Sides, new ground, tiredness and the wall come from one ordinal regression of the dog's legs: each skill has a level that grows
with practice, the dog has a slow walk and a form of each session, every demand has its shipped weight loosely, and the effect
looked for has a wide prior. Everything else is integrated out (Laplace) at points along the effect, and that likelihood meets two
priors, "as dogs go" and "wide", weighed by those odds. The chances stated before each leg are not used as offsets: the filter has
learnt part of the effect by then. The wall is a step at each distance that was asked, each as likely as the next. The two
shares of the handler are Beta-binomial. Expectation of the whistle is the model from which the share of clean sends is read as well.

## Does it find what is there?

${careers} careers with each pattern and ${careers} without, of 60 sessions each, by a mechanism that is not the model (practice by a logarithm, Gumbel's
law, an even mood); seeds from ${seed}. Wanted: found in 80 in 100 or more, claimed in at most 5 in 100. "Records allow": found if claims began
just where 5 in 100 careers without are claimed. The last two columns are a detector that is wrong on purpose: it compares raw shares.

| pattern | found, in 100 | claimed, in 100 | as wanted | records allow | raw shares: found | raw shares: claimed |
|---|---|---|---|---|---|---|
${rows.join('\n')}

With ${careers} careers a share of 80 in 100 is known to about ${Math.round(100 * Math.sqrt(0.16 / careers))} in 100 (one standard error), one of 5 in 100 to about ${Math.round(100 * Math.sqrt(0.0475 / careers))}.
Sides: each skill of these dogs has a level of its own, so that careers in which nothing was planted may have a weaker side. A career counts as
having it when the dog's two sides differ by 0.9 to 1.2 units of readiness, and as not having it under 0.25, planted and born together.
Where more is allowed than is found, the odds are set against a claim on purpose: a false pattern costs months of the wrong work.

Made by \`npx tsx studies/patterns.ts ${careers} ${seed}\`.
`;
}
