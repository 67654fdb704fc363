import { type Coverage, type ForecastOutcome, isCovered, WANTED } from './ready-week.ts';

/** A row of the page: who judged, over which truths. */
export interface SeasonRow {
  readonly name: string;
  readonly outcomes: readonly ForecastOutcome[];
  readonly coverage: Coverage;
}

const inHundred = (share: number) => String(Math.round(100 * share));
const WEEKS = [0, 4, 13, 26] as const;

function coverageLine({ name, coverage }: SeasonRow): string {
  const { forecasts, held, middle, sooner, later } = coverage;
  const shares = [held, middle, sooner, later].map((n) => inHundred(n / forecasts));
  return `| ${name} | ${forecasts} | ${shares.join(' | ')} | ${isCovered(coverage) ? 'yes' : 'no'} |`;
}

function readyLine({ name, outcomes }: SeasonRow): string {
  const cells = WEEKS.map((week) => {
    const stated = outcomes.reduce((sum, { forecast }) => sum + forecast.weeks[week]!.probabilityReady, 0);
    const came = outcomes.filter(({ truth }) => truth !== null && truth <= week).length;
    return `${inHundred(stated / outcomes.length)} / ${inHundred(came / outcomes.length)}`;
  });
  return `| ${name} | ${cells.join(' | ')} |`;
}

/** The page of the forecast: what it says, how, and how often its interval held. */
export function seasonPage(rows: readonly SeasonRow[], size: number, seed: number): string {
  return `# When will she be ready?

A goal is a set of asks, each with the chance of good that is wanted. \`forecast\` draws 2,000 futures of the dog: today's truth from
what is known of it, the sessions of the weeks to come, what they are worth, and a random walk. A future has reached the goal in
the first week (0 is now) in which every ask's chance stands at its wanted one. The answer is the share of futures, by week.

| field | meaning |
|---|---|
| \`now\` | chance that all asks are good on one day, the day's form unknown and shared, with its 90 % interval; with one ask, what \`chance\` states |
| \`weeks\` | from week 0 to half a year, or to the goal's date within a year: \`probabilityReady\`, the share of futures that have reached the goal by the end of the week; \`chance\`, \`interval90\` as in \`now\` |
| \`readyInWeeks\` | the first week by which 10, 50, 90 in 100 futures have reached it; null past the horizon |
| \`first\` | what \`now\` would gain if a single factor cost the dog nothing at a skill, most first; in chance |
| \`perWeek\` | sessions a week that are played: as told, or the mean of the record's latest 26 weeks |
| \`by\` | the goal's date, the last whole week before it, and how likely the goal is reached by then; null where it has passed or is a year off |
| \`asks\` | each ask's chance now beside the wanted one; \`known\` is false under ten legs at its skill |
| \`cantSay\` | only where nothing can be said: \`no-session\`, \`no-asks\`; then \`now\` is null and there are no weeks |

An unknown goal is bad input (\`UNKNOWN_GOAL\`, exit 3), naming those that are there; a pace outside 0 to 21 is wrong usage (2). The same
\`--seed\` gives the same bytes.

What a future is made of. Sessions: at the pace told, evenly apart; else weeks as the record had them, lay-offs with them (stationary
bootstrap). A session works each skill of the goal as often as the last 20 sessions did; half of the time one that never was.
Gain: 0.05 logits for a session, fading by 0.985, or the kennel's own; how many times that this dog gains, 0 to 2, is weighed by its own record.
Walk, lay-off of 60 days at most, age and lapse as in the chances. Asks are asked fresh on known ground. Which asks are practised makes no difference
in the model, and what the coming weeks will teach us plays no part. All of these numbers are our judgement, 2026.

## Does the interval hold?

The truth of each dog is followed for half a year. Goals are set from what is stated at the end of the record (each ask 0.02, 0.06 or 0.12 above its
chance), so that nothing of the truth chooses them. "Held": the truth's week lies from p10 to p90, null being past the horizon. Weeks are
whole and horizons end, so more than 80 in 100 must hold; "middle" breaks the ties by lot (randomised probability integral transform), and an honest statement has
80 in 100 there, 10 on either side. Covered: no fewer than honest statements would have in ${1 / WANTED.unlikely} runs but one.

| truths | forecasts | held | middle | sooner | later | covered |
|---|---|---|---|---|---|---|
${rows.map(coverageLine).join('\n')}

The first row is the model's own law, written a second time, what a session is worth drawn for each dog; the second is a forecaster that is wrong on purpose (a twentieth of each
variance, no walk, the gain taken for sure), which must fail. The others are mechanisms that know nothing of the model, through the whole
program: one dog, 40 sessions on record, three grounds, lay-offs.

## Is it ready when we say so?

Share ready by then, in 100: stated / came.

| truths | now | 4 weeks | 13 weeks | 26 weeks |
|---|---|---|---|---|
${rows.map(readyLine).join('\n')}

By the model's own law the shares agree. In all four mechanisms progress levels off before the half year is over: the forecast is
near the truth in the first weeks and too hopeful about the last, since the random walk, without which the chances would lag behind a dog
that learns, also reaches goals by chance. The interval holds all the same, because it is wide. Trust the first weeks more than the last,
and ask again each week.

Made by \`npx tsx studies/season.ts ${size} ${seed}\`.
`;
}
