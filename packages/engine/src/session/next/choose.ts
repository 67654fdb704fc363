import type { Skill } from '../../ability/index.ts';
import { logit } from '../../numeric/index.ts';
import { easyChain } from './chains.ts';
import { RAISED_FIELDS } from './one-step.ts';
import { knownChains, type Proposal, proposals, proposed, steps } from './proposal.ts';
import type { NextInput } from './session-state.ts';

/** Chances of not missed (our judgement, 2026): wanted in building, the productive band, and what counts as known. */
export const WANTED_CHANCE = 0.8;
export const BAND = { least: 0.65, most: 0.92 } as const;
export const KNOWN_CHANCE = 0.85;
/** A stretch beyond this is too big a step (common practice, no source). */
export const TOO_BIG_STRETCH = 1.2;

/** Worth of staying with the same chain when it is made easier, in logits (our judgement, 2026). */
const OWN_CHAIN = 0.5;

/** Worth of going on from what went well rather than asking something well known, in logits (our judgement, 2026). */
const RAISING = 0.25;
/** A stretch that can be felt: a smaller one is worth less as a raise (our judgement, 2026). */
const FELT_STRETCH = 0.1;

/**
 * What each place in the order of what is usually raised costs, in logits (our judgement, 2026): a new dog is sent farther before it is
 * sent blind (common practice, no source).
 */
const LESS_USUAL = 0.15;

/** What a goal ask that lies the raised way is worth beside one logit of distance from the wanted chance. */
const GOAL_WORTH = 0.4;

function best(list: readonly Proposal[], value: (proposal: Proposal) => number): Proposal | null {
  let top: Proposal | null = null;
  let topValue = -Infinity;
  for (const proposal of list) {
    const worth = value(proposal);
    if (worth > topValue) {
      top = proposal;
      topValue = worth;
    }
  }
  return top;
}

const farFrom = (chance: number, wanted: number) => Math.abs(logit(clamped(chance)) - logit(wanted));
const clamped = (chance: number) => Math.min(1 - 1e-9, Math.max(1e-9, chance));

/** True when every leg is within reach and no more than one thing is raised. */
export function isFair(proposal: Proposal): boolean {
  return proposal.least >= BAND.least && proposal.raised.length <= 1 && proposal.stretch <= TOO_BIG_STRETCH;
}

/** Whether it serves a goal: the raised field stands harder in a goal's ask of this skill than in the base. */
export function isServingGoal(input: NextInput, proposal: Proposal): boolean {
  const leg = proposal.legs[proposal.focus];
  if (!leg || proposal.moved?.way !== 'harder') return false;
  const wanted = input.goals.filter((goal) => goal.skill === leg.skill);
  return wanted.some((goal) => {
    const field = proposal.moved?.field;
    return field !== undefined && goal.ask[field] !== undefined && goal.ask[field] !== leg.ask[field];
  });
}

/** How far down the order of what is usually raised the thing raised stands; 0 where nothing is. */
function unusualness({ legs, focus, moved }: Proposal): number {
  const leg = legs[focus];
  if (!leg || moved?.way !== 'harder') return 0;
  return Math.max(0, RAISED_FIELDS[leg.skill].indexOf(moved.field));
}

/** The build rep: nearest the wanted chance among what is fair, goals counting. `null` when nothing is. */
export function buildRep(input: NextInput, skill: Skill, mayRaise: boolean): Proposal | null {
  const open = proposals(input, skill).filter(
    (proposal) => isFair(proposal) && (mayRaise || proposal.raised.length === 0),
  );
  return best(
    open,
    (proposal) =>
      -farFrom(proposal.notMissed, WANTED_CHANCE) +
      RAISING * Math.min(1, Math.max(0, proposal.stretch) / FELT_STRETCH) +
      (isServingGoal(input, proposal) ? GOAL_WORTH : 0) -
      LESS_USUAL * unusualness(proposal),
  );
}

/** Whether there is a build rep that may raise something, found at the first that is fair. */
export function canBuild(input: NextInput, skill: Skill): boolean {
  return knownChains(input, skill).some(
    ({ legs, focus }) =>
      isFair(proposed(input, legs, focus)) ||
      (['harder', 'easier'] as const).some((way) => steps(input, legs, focus, way).some(isFair)),
  );
}

/** Something known: what went well lately, every leg at 85 in 100 or more, the nearest to 90; `null` without such. */
export function knownRep(input: NextInput, skill: Skill): Proposal | null {
  const known = proposals(input, skill, ['easier']).filter(
    (proposal) => proposal.least >= KNOWN_CHANCE && proposal.raised.length === 0,
  );
  return best(known, (proposal) => -farFrom(proposal.least, 0.9) + (proposal.moved === null ? 0.2 : 0));
}

/** The most likely of what went well lately, where nothing is known well enough; the easy end when nothing ever was. */
export function likeliestRep(input: NextInput, skill: Skill): Proposal {
  const all = proposals(input, skill).filter((proposal) => proposal.raised.length === 0);
  return best(all, (proposal) => proposal.least) ?? easyRep(input, skill);
}

/** The easy end of a skill's usual chain. */
export function easyRep(input: NextInput, skill: Skill): Proposal {
  const legs = easyChain(skill);
  return proposed(
    input,
    legs,
    Math.max(
      0,
      legs.findIndex((leg) => leg.skill === skill),
    ),
  );
}

/**
 * Something easier than a rep: nothing harder in its focus leg and a better chance, the nearest to 90 in 100 of
 * the rep itself made one or two steps easier, of known chains and of the easy end. `null` when it stands at the easy end.
 */
export function easierRep(input: NextInput, than: Proposal): Proposal | null {
  const leg = than.legs[than.focus];
  if (!leg) return null;
  const once = steps(input, than.legs, than.focus, 'easier');
  const twice = once.flatMap((proposal) => steps(input, proposal.legs, proposal.focus, 'easier'));
  const known = knownChains(input, leg.skill).map(({ legs, focus }) => proposed(input, legs, focus));
  const easier = [...once, ...twice, ...known, easyRep(input, leg.skill)].filter(
    (proposal) =>
      proposal.legs[proposal.focus]?.skill === leg.skill &&
      input.filter.stretch(focusQuestion(proposal), leg.question).mean < -0.02 &&
      proposal.least >= Math.min(than.least, KNOWN_CHANCE),
  );
  return best(
    easier,
    (proposal) =>
      -farFrom(proposal.least, 0.9) -
      (proposal.raised.length > 0 ? 1 : 0) +
      (proposal.moved === null ? 0 : OWN_CHAIN),
  );
}

/** One step harder than a rep, the likeliest way first; `null` where every field stands at its end. */
export function harderRep(input: NextInput, than: Proposal): Proposal | null {
  const leg = than.legs[than.focus];
  if (!leg) return null;
  const harder = steps(input, than.legs, than.focus, 'harder').filter(
    (proposal) => input.filter.stretch(focusQuestion(proposal), leg.question).mean > 0.02,
  );
  return best(harder, (proposal) => -farFrom(proposal.notMissed, WANTED_CHANCE) + (isFair(proposal) ? 1 : 0));
}

function focusQuestion(proposal: Proposal) {
  const leg = proposal.legs[proposal.focus];
  if (!leg) throw new RangeError('proposal: expected a focus leg, got none');
  return leg.question;
}
