import type { Skill } from '../../ability/index.ts';
import { logit } from '../../numeric/index.ts';
import { easyRep, KNOWN_CHANCE } from '../next/choose.ts';
import type { PlannedRep, Purpose, Reason } from '../next/next-answer.ts';
import { plannedRep } from '../next/planned-rep.ts';
import { goodOf, type Proposal, proposed, steps } from '../next/proposal.ts';
import { raisedLeg, raisedReason } from '../next/raised-reason.ts';
import type { NextInput } from '../next/session-state.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import { isOneThing, sendKind, sideOfLegs, stopWay } from './candidates.ts';
import type { StatedRep } from './draft.ts';
import type { Stock } from './fill.ts';
import { weakerSide } from './lines-of-work.ts';
import type { PlanWeather } from './plan.ts';
import { isBuild } from './worth.ts';

/** After a stop, this much of the way counts as somewhere else (our judgement, 2026). */
const ELSEWHERE = 0.1;
/** A step at least so many logits down is easier; the fall-back is best asked at this chance (our judgement, 2026). */
const EASIER_BY = 0.1;
const FALL_BACK_CHANCE = 0.9;

/** The reps as a plan gives them: laid out after one another, each with its fall-back and its reasons. */
export function plannedReps(
  stock: Stock,
  reps: readonly StatedRep[],
  cleanShare: number,
  weather: PlanWeather | undefined,
): PlannedRep[] {
  const stops = reps.some(({ legs }) => sendKind(legs) === 'stopped');
  const weaker = weakerSide(stock.record.inputAt(stock.record.start));
  const wind = {
    ...(weather?.windFromDeg === undefined ? {} : { windFromDeg: weather.windFromDeg }),
    ...(weather?.windMPerS === undefined ? {} : { windMPerS: weather.windMPerS }),
  };
  return reps.map((rep, n) => {
    const input = stock.record.inputAt(rep.moment);
    const purpose = purposeOf(rep, stops);
    const reasons = reasonsOf(input, rep, purpose, { earlier: reps.slice(0, n), cleanShare, weaker });
    const planned = plannedRep(input, rep.proposal, fallBack(stock, rep), purpose, reasons);
    return { ...planned, n: n + 1, layout: { ...rep.laid.layout, ...wind }, before: rep.laid.before };
  });
}

function purposeOf(rep: StatedRep, stops: boolean): Purpose {
  if (rep.slot.role !== 'work') return rep.slot.role;
  if (isBuild(rep)) return 'build';
  return stops && sendKind(rep.legs) === 'clean' ? 'clean' : 'vary';
}

interface Around {
  readonly earlier: readonly StatedRep[];
  readonly cleanShare: number;
  readonly weaker: Skill | null;
}

function reasonsOf(input: NextInput, rep: StatedRep, purpose: Purpose, around: Around): Reason[] {
  const { proposal } = rep;
  const skill = proposal.legs[proposal.focus]?.skill;
  const chanceNow = goodOf(proposal);
  const isNew = proposal.legs.some(({ step }) => step === null);
  const first: Reason = isNew
    ? { code: 'easy-end', skill, chanceNow }
    : purposeReason(input, rep, purpose, around);
  const weaker = around.weaker !== null && proposal.legs.some((leg) => leg.skill === around.weaker);
  const isStepDown = input.earlierSessionsOnGround === 0 && (purpose === 'vary' || purpose === 'check');
  return [
    first,
    ...(weaker && purpose !== 'finish' ? [{ code: 'weaker-side' as const, skill: around.weaker }] : []),
    ...(isStepDown ? [{ code: 'new-ground-step-down' as const }] : []),
  ].map((reason) => ({ ...reason, skill: reason.skill ?? undefined }));
}

function purposeReason(input: NextInput, rep: StatedRep, purpose: Purpose, around: Around): Reason {
  const { proposal } = rep;
  const skill = proposal.legs[proposal.focus]?.skill;
  const chanceNow = goodOf(proposal);
  if (purpose === 'check') return { code: 'known-first', skill, chanceNow };
  if (purpose === 'finish') return { code: 'finish-well', skill, chanceNow };
  if (purpose === 'clean') return { code: 'run-clean', share: around.cleanShare };
  const raised = purpose === 'build' ? raisedLeg(proposal) : null;
  if (raised !== null) return raisedReason(input, raised.leg, raised.field);
  return isStopElsewhere(rep, around.earlier)
    ? { code: 'vary-where-the-stop-comes', skill: 'stop' }
    : { code: 'hold-here', skill, chanceNow };
}

function isStopElsewhere({ legs }: StatedRep, earlier: readonly StatedRep[]): boolean {
  const way = stopWay(legs);
  const last = earlier.map((rep) => stopWay(rep.legs)).findLast((one) => one !== null);
  return way !== null && last != null && Math.abs(way - last) >= ELSEWHERE;
}

/** Something easier of the same skill: its own chain a step down, a known one, or the easy end; itself where there is nothing. */
function fallBack({ record, lines, mayAsk }: Stock, { proposal, moment }: StatedRep): Proposal {
  const input = record.inputAt(moment);
  const leg = proposal.legs[proposal.focus];
  if (leg === undefined) return proposal;
  const known = lines
    .flatMap((line) => line.known)
    .filter((one) => one.legs[one.focus]?.skill === leg.skill)
    .map((one) => proposed(input, one.legs, one.focus));
  const open = [
    ...steps(input, proposal.legs, proposal.focus, 'easier'),
    ...known,
    easyRep(input, leg.skill),
  ];
  // The same side, and straight through where it was: the orders that were drawn stand.
  const isAlike = (legs: readonly LaidLeg[]) =>
    sideOfLegs(legs) === sideOfLegs(proposal.legs) && sendKind(legs) === sendKind(proposal.legs);
  let best: Proposal | null = null;
  for (const one of open) {
    const its = one.legs[one.focus];
    if (its === undefined || !mayAsk(one.legs) || !isOneThing(one) || !isAlike(one.legs)) continue;
    if (input.filter.stretch(its.question, leg.question).mean > -EASIER_BY) continue;
    if (one.least < Math.min(proposal.least, KNOWN_CHANCE)) continue;
    if (best === null || farFromEasy(one) < farFromEasy(best)) best = one;
  }
  return best ?? proposal;
}

const farFromEasy = ({ least }: Proposal): number =>
  Math.abs(logit(Math.min(1 - 1e-9, least)) - logit(FALL_BACK_CHANCE));
