import type { JoinCandidate, JoinProposal, ProposedJoin } from '@sedgeline/projections';
import { describe, expect, it } from 'vitest';
import {
  answered,
  joinsOf,
  newJoinDraft,
  placesLeft,
  questionsLeft,
  toggleSure,
  unanswered,
} from './join-draft.ts';

const at = (startS: number, sureness: number): JoinCandidate => ({
  kind: 'long',
  startS,
  endS: startS + 0.5,
  pitchHz: 3000,
  count: 1,
  sureness,
});
const join = (rep: string, isSure: boolean, ...candidates: JoinCandidate[]): ProposedJoin => ({
  rep,
  leg: 0,
  wanted: 'long',
  candidates,
  isSure,
});

/** Rep a surely at 10 s; b and c may both be the blast at 20 s, c also that at 30 s; d that at 40 s. */
const PROPOSAL: JoinProposal = {
  calls: [at(10, 0), at(20, 0), at(30, 0), at(40, 0)],
  reps: [],
  joins: [
    join('a', true, at(10, 0.99)),
    join('b', false, at(20, 0.6)),
    join('c', false, at(20, 0.7), at(30, 0.2)),
    join('d', false, at(40, 0.5)),
  ],
  wanted: 4,
  untimed: 0,
};
const WANTS = ['a', 'b', 'c', 'd'].map((rep) => ({ rep, leg: 0 }));

describe('what the handler says of a proposal', () => {
  it('begins with what is sure, and asks of each blast once, by time', () => {
    const draft = newJoinDraft(PROPOSAL);
    expect(joinsOf(draft)).toEqual([{ rep: 'a', leg: 0, atS: 10, by: 'program' }]);
    expect(questionsLeft(draft).map((one) => [one.proposed.rep, one.at.startS])).toEqual([
      ['c', 20],
      ['d', 40],
    ]);
  });

  it('joins what he says, where he says, and never the same blast or leg twice', () => {
    let draft = newJoinDraft(PROPOSAL);
    const [first] = questionsLeft(draft);
    draft = answered(draft, first!, { rep: 'b', leg: 0 });
    // The blast at 20 s is taken, and the leg of b too: c has no other likely blast of its own left to ask of first.
    expect(questionsLeft(draft).map((one) => one.proposed.rep)).toEqual(['d']);
    expect(placesLeft(draft, WANTS).map(({ rep }) => rep)).toEqual(['c', 'd']);
    const [second] = questionsLeft(draft);
    draft = answered(draft, second!, null);
    expect(questionsLeft(draft)).toEqual([]);
    expect(joinsOf(draft)).toEqual([
      { rep: 'a', leg: 0, atS: 10, by: 'program' },
      { rep: 'b', leg: 0, atS: 20, by: 'handler' },
    ]);
    expect(questionsLeft(unanswered(draft)).map((one) => one.proposed.rep)).toEqual(['d']);
  });

  it('leaves out a sure one that he unticked, until he ticks it again', () => {
    const without = toggleSure(newJoinDraft(PROPOSAL), 0);
    expect(joinsOf(without)).toEqual([]);
    expect(placesLeft(without, WANTS).map(({ rep }) => rep)).toContain('a');
    expect(joinsOf(toggleSure(without, 0))).toHaveLength(1);
  });
});
