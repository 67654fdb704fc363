import { CONDITIONS, MOST_WRONG } from './conditions.ts';
import { type JoinScore, keepsWanted, sureRightShare, sureWrongShare } from './judge-joiner.ts';

const inHundred = (share: number, decimals = 0): string => (100 * share).toFixed(decimals);

/** The table of one joiner. */
export function joiningTable(name: string, scores: readonly JoinScore[]): string {
  const rows = scores.map((score) => {
    const { set, legs, joinable, sureRight, sureWrong, askedRight, askedWrong, wantedSure } = score;
    const asked = askedRight + askedWrong;
    return `| ${set} | ${legs} | ${joinable} | ${inHundred(sureRightShare(score))} (${inHundred(wantedSure)}) | ${sureWrong} of ${sureRight + sureWrong} (${inHundred(sureWrongShare([score]), 2)}) | ${asked} | ${asked === 0 ? 'none' : inHundred(askedRight / asked)} |`;
  });
  return `**${name}**: ${keepsWanted(scores) ? 'keeps what is wanted' : 'does not keep what is wanted'}; of what it was sure of, ${inHundred(sureWrongShare(scores), 2)} in 100 wrong.

| set | legs | heard | surely joined, in 100 of those heard (wanted) | surely wrong (in 100) | asked | right of those, in 100 |
|---|---|---|---|---|---|---|
${rows.join('\n')}`;
}

/** What the sets are. */
export function conditionsTable(): string {
  const rows = CONDITIONS.map(
    ({ name, startWithinS, unrecorded, lost, falsePerHour, others, sameWhistle }) =>
      `| ${name} | ${startWithinS === null ? 'not known' : `± ${startWithinS} s`} | ${inHundred(unrecorded)} | ${inHundred(lost)} | ${falsePerHour} | ${others} | ${inHundred(sameWhistle)} |`,
  );
  return `| set | beginning of the sound | reps never tapped, in 100 | blasts lost, in 100 | false an hour | other handlers | with the same whistle, in 100 |
|---|---|---|---|---|---|---|
${rows.join('\n')}

Wanted: at most ${inHundred(MOST_WRONG.overall, 1)} in 100 of the sure joins wrong over all sets, ${inHundred(MOST_WRONG.inOneSet, 1)} in any one.`;
}
