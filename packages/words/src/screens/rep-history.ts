import type { Tongue } from '../tongue.ts';
import type { TradeWords } from '../trade.ts';
import type { Cause, Expectation, Grade, Reward, Skill } from '../vocabulary.ts';

/** One thing that a step in the life of a rep changed, as the record tells it. */
export type ToldChange =
  | { readonly of: 'leg-added'; readonly skill: Skill; readonly to: Grade }
  | { readonly of: 'leg-taken'; readonly skill: Skill; readonly from: Grade }
  | { readonly of: 'grade'; readonly skill: Skill; readonly from: Grade; readonly to: Grade }
  | { readonly of: 'cause'; readonly skill: Skill; readonly from: Cause | null; readonly to: Cause | null }
  | { readonly of: 'ask'; readonly skill: Skill; readonly fromM: number | null; readonly toM: number | null }
  | {
      readonly of: 'latency';
      readonly skill: Skill;
      readonly fromS: number | null;
      readonly toS: number | null;
    }
  | { readonly of: 'expectation'; readonly from: Expectation; readonly to: Expectation }
  | { readonly of: 'clean'; readonly to: boolean }
  | { readonly of: 'note'; readonly from: string; readonly to: string }
  | { readonly of: 'reward'; readonly from: readonly Reward[]; readonly to: readonly Reward[] }
  | { readonly of: 'got-it'; readonly to: boolean };

const STEPS = {
  recorded: 'recorded',
  'from-memory': 'put in from memory',
  changed: 'changed',
  ended: 'ended there',
  'went-on': 'went on after all',
  struck: 'taken out',
  restored: 'brought back',
} as const;

/** Words of putting a rep right, and of what became of it. */
export function repHistoryWords(t: Tongue, trade: TradeWords) {
  const name = (skill: Skill): string => trade.skill(skill).toLowerCase();
  const grade = (one: Grade): string => trade.grade(one);
  const whose = (cause: Cause | null): string =>
    cause === null ? 'nobody' : trade.cause(cause).toLowerCase();
  const paid = (rewards: readonly Reward[]): string =>
    rewards.length === 0 ? 'nothing' : t.list(rewards.map((one) => trade.reward(one)));
  const after = (s: number): string => `${t.number(s, 2)} s after the whistle`;
  const latency = (skill: string, fromS: number | null, toS: number | null): string => {
    if (toS === null) return `time of the ${skill} taken out`;
    return fromS === null ? `${skill} ${after(toS)}` : `${skill} ${after(toS)}, was ${t.number(fromS, 2)} s`;
  };
  const change = (c: ToldChange): string => {
    switch (c.of) {
      case 'leg-added':
        return `${name(c.skill)} ${grade(c.to)}`;
      case 'leg-taken':
        return `${name(c.skill)} taken back, was ${grade(c.from)}`;
      case 'grade':
        return `${name(c.skill)} ${grade(c.to)}, was ${grade(c.from)}`;
      case 'cause':
        return `whose the ${name(c.skill)} was: ${whose(c.to)}, before ${whose(c.from)}`;
      case 'ask':
        return c.fromM === null || c.toM === null || c.fromM === c.toM
          ? `what was asked of the ${name(c.skill)}`
          : `${name(c.skill)} at ${t.length(c.toM)}, was ${t.length(c.fromM)}`;
      case 'latency':
        return latency(name(c.skill), c.fromS, c.toS);
      case 'expectation':
        return `${trade.expectation(c.to)}, was ${trade.expectation(c.from)}`;
      case 'clean':
        return c.to ? 'straight through' : 'not straight through';
      case 'note':
        return c.from === '' ? `note “${c.to}”` : `note “${c.to}”, was “${c.from}”`;
      case 'reward':
        return c.from.length === 0 ? `reward: ${paid(c.to)}` : `reward: ${paid(c.to)}, was ${paid(c.from)}`;
      case 'got-it':
        return c.to ? 'got it anyway' : 'did not get it';
    }
  };
  return {
    history: {
      title: 'What became of it',
      step: (what: keyof typeof STEPS, changes: readonly ToldChange[]): string =>
        changes.length === 0 ? STEPS[what] : `${STEPS[what]}: ${changes.map(change).join('; ')}`,
      takenBack: 'taken back with Undo',
      by: (who: string | null, device: string | null): string =>
        who ?? (device === null ? 'who is not known' : `device ${device}`),
    },
    fromMemory: 'from memory',
    struck: 'Taken out',
    bringBack: (skills: readonly Skill[]): string =>
      `Bring back ${skills.length === 0 ? 'the rep' : t.list(skills.map(name))}`,
    memory: {
      open: 'Add a rep from memory',
      place: 'Where does it belong?',
      first: 'Before the first',
      after: (rep: number): string => `After rep ${t.number(rep)}`,
      asks: 'Asked as the rep before it; change it afterwards where it was otherwise.',
      keep: 'Put it in its place',
      cancel: 'Leave it',
      kept: 'Put in, marked as from memory.',
    },
  };
}

export type RepHistoryWords = ReturnType<typeof repHistoryWords>;
