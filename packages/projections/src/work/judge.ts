import type { Ask, Skill } from '@sedgeline/engine/ability';
import {
  drawnRep,
  easierRep,
  easyRep,
  focusOf,
  goodOf,
  harderRep,
  isCleanSend,
  isPurpose,
  likeliestRep,
  type NextInput,
  type PictureConditions,
  type Proposal,
  type Purpose,
  plannedRep,
  proposed,
  type Reason,
  raisedLeg,
  raisedReason,
  straightThrough,
} from '@sedgeline/engine/session';
import type { AskedRep, Turn } from '../kennel.ts';
import type { JudgedRep } from '../views/views.ts';

function judged(
  input: NextInput,
  proposal: Proposal,
  purpose: Purpose,
  reasons: readonly Reason[],
  conditions: PictureConditions,
): JudgedRep {
  const rep = plannedRep(input, proposal, easierRep(input, proposal) ?? proposal, purpose, reasons);
  return {
    rep,
    picture: drawnRep(rep.legs, conditions),
    chain: input.filter.chain(proposal.legs.map((leg) => leg.question)),
    reasons,
  };
}

/** Chances, step and drawing of a rep that the handler chose. */
export function judgeRep(input: NextInput, rep: AskedRep, conditions: PictureConditions): JudgedRep {
  const proposal = proposed(input, rep.legs, focusOf(rep.legs, input.focus));
  const purpose: Purpose = isPurpose(rep.purpose) ? rep.purpose : isCleanSend(rep.legs) ? 'clean' : 'build';
  return standingFor(judged(input, proposal, purpose, stepReasons(input, proposal), conditions), rep);
}

/** A rep that is asked otherwise stands for the same number of the plan. */
function standingFor(judgedRep: JudgedRep, { planRep }: AskedRep): JudgedRep {
  return planRep === undefined ? judgedRep : { ...judgedRep, rep: { ...judgedRep.rep, planRep } };
}

/** The rep one step harder or easier, or straight through; `null` where there is nothing that way. */
export function turnRep(
  input: NextInput,
  rep: AskedRep,
  turn: Turn,
  conditions: PictureConditions,
): JudgedRep | null {
  const now = proposed(input, rep.legs, focusOf(rep.legs, input.focus));
  if (turn === 'clean') {
    const legs = straightThrough(rep.legs);
    return legs === null
      ? null
      : standingFor(
          judged(input, proposed(input, legs, 0), 'clean', [{ code: 'run-clean' }], conditions),
          rep,
        );
  }
  const turned = turn === 'harder' ? harderRep(input, now) : easierRep(input, now);
  if (turned === null) return null;
  const purpose: Purpose = turn === 'harder' ? 'build' : 'easier';
  return standingFor(judged(input, turned, purpose, turnReasons(now, turned, turn), conditions), rep);
}

/** The chain in which a skill is first asked: the likeliest of what went well lately, or the easy end. */
export function chainRep(input: NextInput, skill: Skill, conditions: PictureConditions): JudgedRep {
  const known = (input.successes.get(skill)?.length ?? 0) > 0;
  const proposal = known ? likeliestRep(input, skill) : easyRep(input, skill);
  const code = known ? ('hold-here' as const) : ('easy-end' as const);
  return judged(input, proposal, 'build', [{ code, skill, chanceNow: goodOf(proposal) }], conditions);
}

function fieldValue(ask: Ask, field: string): number | string | boolean | undefined {
  return ask[field as keyof Ask];
}

/** What a turned rep moves, against the rep before it was turned. */
function turnReasons(was: Proposal, now: Proposal, turn: 'harder' | 'easier'): Reason[] {
  const before = was.legs[was.focus];
  const after = now.legs[now.focus];
  const moved = now.moved?.field === 'wayFraction' ? 'distanceM' : now.moved?.field;
  if (!before || !after) return [];
  return [
    {
      code: turn === 'harder' ? 'one-thing-raised' : 'one-thing-lowered',
      skill: after.skill,
      ...(moved === undefined
        ? {}
        : { field: moved, from: fieldValue(before.ask, moved), to: fieldValue(after.ask, moved) }),
      chanceBefore: before.forecast.chance.good,
      chanceNow: after.forecast.chance.good,
    },
  ];
}

/** What a rep of the handler's own raises against its base. */
function stepReasons(input: NextInput, proposal: Proposal): Reason[] {
  const leg = proposal.legs[proposal.focus];
  if (!leg) return [];
  const chanceNow = leg.forecast.chance.good;
  if (leg.step === null) return [{ code: 'nothing-known-yet', skill: leg.skill, chanceNow }];
  const raised = raisedLeg(proposal);
  if (raised === null) return [{ code: 'hold-here', skill: leg.skill, chanceNow }];
  return [raisedReason(input, raised.leg, raised.field)];
}
