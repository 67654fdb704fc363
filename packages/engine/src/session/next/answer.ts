import { easierRep } from './choose.ts';
import type { NextAnswer, Purpose, Reason } from './next-answer.ts';
import { plannedRep } from './planned-rep.ts';
import type { Proposal } from './proposal.ts';
import type { NextInput } from './session-state.ts';

/** The answer "ask this", with its easier fall-back. */
export function askNext(
  input: NextInput,
  proposal: Proposal,
  purpose: Purpose,
  reasons: readonly Reason[],
): NextAnswer {
  const fallBack = easierRep(input, proposal) ?? proposal;
  const rep = plannedRep(input, proposal, fallBack, purpose, reasons);
  const easier = plannedRep(input, fallBack, fallBack, 'easier', [{ code: 'one-thing-lowered' }]);
  return { do: 'rep', rep, easier, reasons };
}

/** The answer "take a break". */
export function breakNow({ repsSinceBreak, minutesSinceBreak }: NextInput, minutes: number): NextAnswer {
  const reason = { code: 'break-due', count: repsSinceBreak, minutes: minutesSinceBreak } as const;
  return { do: 'break', minutes, reasons: [reason] };
}

/** The answer "that is all for today". */
export function endHere(reasons: readonly Reason[]): NextAnswer {
  return { do: 'end', reasons };
}
