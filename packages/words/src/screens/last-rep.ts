import type { Tongue } from '../tongue.ts';
import type { TradeWords } from '../trade.ts';
import type { Reward } from '../vocabulary.ts';

/** Words of what may be said of the last rep in one tap, and of the plan a session follows. */
export function lastRepWords(t: Tongue, trade: TradeWords) {
  return {
    last: {
      title: (rep: number): string => `Rep ${t.number(rep)}`,
      blew: { earlier: 'Blew earlier', later: 'Blew later' },
      /** What a tap of it does: the stop moves so far from where it was asked. */
      blewBy: (byM: number): string =>
        byM > 0 ? `${t.length(byM)} later` : byM < 0 ? `${t.length(-byM)} earlier` : 'as planned',
      saidBlew: (when: 'earlier' | 'later'): string => `Blown ${when} than planned, recorded.`,
      reward: 'Paid with',
      rewards: (reward: Reward): string => {
        const name = trade.reward(reward);
        return name.charAt(0).toUpperCase() + name.slice(1);
      },
      saidReward: (rewards: readonly Reward[]): string =>
        rewards.length === 0 ? 'Reward taken back.' : `Reward: ${t.list(rewards.map(trade.reward))}.`,
      gotIt: 'Got it anyway',
      saidGotIt: (got: boolean): string =>
        got ? 'Got it anyway, recorded.' : 'Did not get it after all, recorded.',
    },
    planLine: (
      course: { readonly do: 'keep' | 'adapt' | 'end'; readonly done: number; readonly of: number },
      planRep: number | null,
    ): string => {
      const place =
        planRep === null
          ? `${t.number(course.done)} of ${t.number(course.of)} done`
          : `rep ${t.number(planRep)} of ${t.number(course.of)}`;
      if (course.do === 'end') return `Plan: ${t.number(course.done)} of ${t.number(course.of)} done`;
      return course.do === 'keep' ? `Plan: ${place}, as planned` : `Plan: ${place}, changed for today`;
    },
  };
}

export type LastRepWords = ReturnType<typeof lastRepWords>;
