import { sameContent } from '@sedgeline/journal';
import {
  type AskedLeg,
  type AskedRep,
  type LegRecord,
  legBody,
  type TapFact,
  type WorkView,
} from '@sedgeline/projections';
import { setAskField } from '../parts/ask-editor/set-ask-field.ts';
import { wasWhistleBlown } from '../parts/was-whistle-blown.ts';
import { repInHand } from './asked-rep.ts';

/** How much later (or earlier) one tap moves the stop: a tenth of the send, at least 1 m (our judgement, 2026). */
const BLEW_SHARE = 0.1;
const FARTHEST_M = 400;

/** What became of "blew later" or "blew earlier": what is amended, and the rep in hand as it is from now on. */
interface Blown {
  readonly facts: readonly TapFact[];
  readonly chosen: AskedRep | null;
}

/** The chain with its stop moved, and all that stands at the place of the stop; `null` where there is no stop. */
function moved(legs: readonly AskedLeg[], when: 'earlier' | 'later'): readonly AskedLeg[] | null {
  const stop = legs.findIndex(({ skill }) => skill === 'stop');
  const atM = legs[stop]?.ask.distanceM;
  if (atM === undefined) return null;
  const byM = Math.max(1, Math.round(atM * BLEW_SHARE)) * (when === 'later' ? 1 : -1);
  return setAskField(legs, stop, 'distanceM', Math.min(FARTHEST_M, Math.max(1, atM + byM)));
}

/** A leg done otherwise than it was planned: the ask is what was done, and the plan is kept beside it. */
function doneOtherwise(leg: LegRecord, ask: LegRecord['ask']) {
  const plan = leg.planned ?? leg.ask;
  const { planned: _, ...rest } = legBody(leg);
  return sameContent(plan, ask) ? { ...rest, ask } : { ...rest, ask, planned: plan };
}

/**
 * The handler blew later or earlier than planned: in the chain in hand, else in the last rep of the session. `null` where there
 * is no stop whose place is known, and where the chain was missed before its stop.
 */
export function blowFacts(view: WorkView, chosen: AskedRep | null, when: 'earlier' | 'later'): Blown | null {
  const { inHand } = view;
  const last = inHand === null ? view.done.at(-1) : { rep: inHand.rep, legs: inHand.graded };
  if (last === undefined) return null;
  const asked = inHand === null ? null : repInHand(view, chosen);
  if (!wasWhistleBlown(last.legs, asked?.legs ?? last.legs)) return null;
  const legs = moved(asked?.legs ?? last.legs.map(({ skill, ask }) => ({ skill, ask })), when);
  if (legs === null) return null;
  const done = last.legs.map((leg, i) => doneOtherwise(leg, legs[i]?.ask ?? leg.ask));
  const isAmended = last.legs.some((leg, i) => !sameContent(leg.ask, legs[i]?.ask));
  return {
    facts: isAmended ? [{ kind: 'rep-amended', body: { rep: last.rep, legs: done } }] : [],
    chosen: asked === null ? chosen : { ...asked, legs },
  };
}
