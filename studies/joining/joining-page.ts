import { wilsonInterval } from '@sedgeline/engine/numeric';
import { CONDITIONS, MOST_WRONG } from './conditions.ts';
import type { Joiner } from './joiner.ts';
import { type JoinScore, keepsWanted, sureRightShare, sureWrongShare } from './judge-joiner.ts';

const inHundred = (share: number, decimals = 0): string => (100 * share).toFixed(decimals);

/** How many of the sure joins were wrong, in a hundred, with the 95 % interval of that share. */
function wrongOf(score: JoinScore): string {
  const sure = score.sureRight + score.sureWrong;
  if (sure === 0) return 'none sure';
  const [low, high] = wilsonInterval(score.sureWrong, sure);
  return `${score.sureWrong} of ${sure} (${inHundred(sureWrongShare([score]), 2)}; ${inHundred(low, 2)} to ${inHundred(high, 2)})`;
}

/** The table of one joiner. */
function joiningTable(name: string, scores: readonly JoinScore[]): string {
  const rows = scores.map((score) => {
    const { set, legs, joinable, askedRight, askedWrong, wantedSure } = score;
    const asked = askedRight + askedWrong;
    return `| ${set} | ${legs} | ${joinable} | ${inHundred(sureRightShare(score), 1)} (${inHundred(wantedSure)}) | ${wrongOf(score)} | ${asked} | ${asked === 0 ? 'none' : inHundred(askedRight / asked)} |`;
  });
  return `**${name}**: ${keepsWanted(scores) ? 'keeps what is wanted' : 'does not keep what is wanted'}; of what it was sure of, ${inHundred(sureWrongShare(scores), 2)} in 100 wrong.

| set | legs | heard | surely joined, in 100 of those heard (wanted) | surely wrong (in 100; 95 % interval) | asked | right of those, in 100 |
|---|---|---|---|---|---|---|
${rows.join('\n')}`;
}

/** What the sets are. */
function conditionsTable(): string {
  const rows = CONDITIONS.map(
    ({ name, startWithinS, unrecorded, lost, falsePerHour, others, sameWhistle }) =>
      `| ${name} | ${startWithinS === null ? 'not known' : `± ${startWithinS} s`} | ${inHundred(unrecorded)} | ${inHundred(lost)} | ${falsePerHour} | ${others} | ${inHundred(sameWhistle)} |`,
  );
  return `| set | beginning of the sound | reps never tapped, in 100 | blasts lost, in 100 | false an hour | other handlers | with the same whistle, in 100 |
|---|---|---|---|---|---|---|
${rows.join('\n')}

Wanted: at most ${inHundred(MOST_WRONG.overall, 1)} in 100 of the sure joins wrong over all sets, ${inHundred(MOST_WRONG.inOneSet, 1)} in any one.`;
}

/** The page of the study: how blasts are joined to reps, and how often that was right. */
export function joiningPage(
  joiners: readonly Joiner[],
  scores: readonly (readonly JoinScore[])[],
  sessions: number,
  seed: number,
): string {
  const [ours, ...wrong] = joiners.map(({ name }, n) => joiningTable(name, scores[n]!));
  return `# Joining what was heard to the reps

A sound holds blasts with times of its own; the record holds taps. Each tap came late, by a thumb that had something else to do; some reps
were never tapped; other people have whistles; and the recorder's clock is not the phone's. \`joinCalls\` (\`packages/engine/src/sound/joining/\`) gives
for each leg that is whistled for the blasts that may be its own, each with a sureness. A sure one is proposed, an uncertain one is
asked, and nothing is kept before the handler says so.

## How it is done

Blasts are put together to calls: a long one with its repeats, a run of pips, a click. For one clock offset and one scatter of
the thumb, every way of pairing calls with legs in their order is summed by a forward and a backward recursion: a pair weighs
how likely a call of that kind at that second is for that leg, against calls that come evenly from elsewhere. What lies between whistle and tap is
the time of the legs that were tapped in one go, and the thumb, whose law has a tail of late ones; where the leg that a stop ended was tapped by
itself, that tap is weighed too. Offsets within what is known of the
beginning, three scatters and the pitches that the own whistle may have (a learned one, or any pitch that comes twice) are then summed over.
Their evidence is counted to the power of 0.7, since the laws are guesses. Where more than half of the long blasts of
the likeliest own pitch are left over (two in five, where those of other pitches come more than 20 an hour), others blow the same whistle, and nothing
is called sure. The drift of a clock is not modelled: it is within the thumb's scatter.

## Is it right?

${sessions} made sessions a set, by a mechanism that shares no code and no law with what joins (\`studies/joining/\`): handlers who tap each leg or the whole
rep, some with the next one; second whistles; pips for the way home; practice blasts; another handler's exercise; clocks that drift by up to 150 parts in a
million. The rates are our judgement, 2026: nobody has counted them. No pitch is known beforehand.

${conditionsTable()}

${ours}

A handler's class with others' whistles of the same make all round is where little can be joined unasked, and a missed aim is shown as missed. Sound that was really recorded has not been tried.

## Ways that are wrong on purpose

${wrong.join('\n\n')}

Made by \`npx tsx studies/joining.ts ${sessions} ${seed}\`.
`;
}
