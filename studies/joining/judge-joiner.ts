import { CONDITIONS, type Conditions, MOST_WRONG } from './conditions.ts';
import type { Joiner } from './joiner.ts';
import { legKey, type MadeSession, madeSession } from './made-session.ts';

/** How a joiner did on one set: legs that had a whistle and were tapped. */
export interface JoinScore {
  readonly set: string;
  readonly sessions: number;
  readonly legs: number;
  /** Of these the ear has a blast. */
  readonly joinable: number;
  readonly sureRight: number;
  readonly sureWrong: number;
  readonly askedRight: number;
  readonly askedWrong: number;
  readonly wantedSure: number;
}

const same = (a: number, b: number) => Math.abs(a - b) < 1e-6;

/** Scores joiners on the same made sessions, `count` of each set. A leg without a heard blast can only be joined wrongly. */
export function judgeJoiners(
  joiners: readonly Joiner[],
  count: number,
  seed: number,
  conditions: readonly Conditions[] = CONDITIONS,
  make: (conditions: Conditions, name: string) => MadeSession = madeSession,
): JoinScore[][] {
  return joiners.map((joiner) =>
    conditions.map((set) => {
      const score = { legs: 0, joinable: 0, sureRight: 0, sureWrong: 0, askedRight: 0, askedWrong: 0 };
      for (let n = 0; n < count; n++) {
        const { seen, truth } = make(set, `${seed} ${n}`);
        const tapped = new Set(seen.reps.flatMap(({ rep, legs }) => legs.map((_, leg) => legKey(rep, leg))));
        for (const [key, starts] of truth) {
          if (!tapped.has(key)) continue;
          score.legs += 1;
          if (starts.length > 0) score.joinable += 1;
        }
        for (const { rep, leg, startS, isSure } of joiner.join(seen)) {
          const isRight = (truth.get(legKey(rep, leg)) ?? []).some((one) => same(one, startS));
          if (isSure) score[isRight ? 'sureRight' : 'sureWrong'] += 1;
          else score[isRight ? 'askedRight' : 'askedWrong'] += 1;
        }
      }
      return { set: set.name, sessions: count, ...score, wantedSure: set.wantedSure };
    }),
  );
}

export const sureWrongShare = (scores: readonly JoinScore[]): number => {
  const sum = (of: (score: JoinScore) => number) => scores.reduce((all, score) => all + of(score), 0);
  const sure = sum(({ sureRight, sureWrong }) => sureRight + sureWrong);
  return sure === 0 ? 0 : sum(({ sureWrong }) => sureWrong) / sure;
};

export const sureRightShare = ({ sureRight, joinable }: JoinScore): number =>
  joinable === 0 ? 0 : sureRight / joinable;

/** Whether a joiner keeps what is wanted: hardly ever surely wrong, and sure often enough to be of use. */
export function keepsWanted(scores: readonly JoinScore[]): boolean {
  return (
    sureWrongShare(scores) <= MOST_WRONG.overall &&
    scores.every((score) => sureWrongShare([score]) <= MOST_WRONG.inOneSet) &&
    scores.every((score) => sureRightShare(score) >= score.wantedSure)
  );
}
