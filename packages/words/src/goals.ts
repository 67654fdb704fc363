import type { AskedLeg, Goal, Temptation } from './vocabulary.ts';

/** What a thing is called that a leg sends the dog to: in sentences, on the card and in its text. */
export const GOAL_NAMES: Readonly<Record<Goal, string>> = {
  blind: 'blind',
  memory: 'memory',
  mark: 'mark',
  game: 'game',
  post: 'post',
};

const GOALS: Readonly<Record<Temptation, Goal | null>> = {
  none: null,
  post: 'post',
  'placed-dummy': 'memory',
  'thrown-dummy': 'mark',
  'shot-and-dummy': 'mark',
  game: 'game',
};

function ownGoal({ skill, ask }: AskedLeg): Goal | null {
  if (skill === 'mark') return 'mark';
  return ask.blind === true ? 'blind' : GOALS[ask.temptation ?? 'none'];
}

/**
 * What each leg of a chain sends the dog to, `null` where it does not say: a blind was not seen, a mark was seen to
 * fall, a memory was seen earlier. A cast back goes on to what the way out went to, so that the two have one name: a
 * blind if either leg says so, else what the cast says. Only a post, or a mark, is never the dummy of a cast that
 * names another. The same rule lays out the card; a test of the field card holds the two together.
 */
export function goalsOf(legs: readonly AskedLeg[]): (Goal | null)[] {
  const goals = legs.map(ownGoal);
  const send = legs.findIndex(({ skill }) => skill === 'line' || skill === 'mark' || skill === 'hunt');
  const out = send >= 0 ? send : legs.findIndex(({ skill }) => skill === 'stop');
  const cast = legs.findIndex(({ skill }) => skill.startsWith('cast-'));
  const [first, then] = [goals[out], goals[cast]];
  if (!first || !then || legs[cast]?.skill !== 'cast-back') return goals;
  const isTwo = first !== then && (first === 'post' || then === 'post' || legs[out]?.skill === 'mark');
  if (isTwo) return goals;
  const one = first === 'blind' ? first : then;
  return goals.map((goal, leg) => (leg === out || leg === cast ? one : goal));
}
