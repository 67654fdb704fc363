import type { Skill } from '@sedgeline/engine/ability';
import type { GoalRecord } from '../record/training-record.ts';
import type { StandingAsk } from './views.ts';

/** What goals are made from and what goals there are: the season of one dog before anything is forecast. */
export interface SeasonView {
  readonly dog: string;
  readonly dogName: string;
  /** Its sessions with a rep in them. */
  readonly sessions: number;
  readonly goals: readonly GoalRecord[];
  /** Every skill with its named asks and their chances of good now; those that were worked come first. */
  readonly skills: readonly {
    readonly skill: Skill;
    readonly legs: number;
    readonly asks: readonly StandingAsk[];
  }[];
}
