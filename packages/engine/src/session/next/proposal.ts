import {
  type Ask,
  type AskField,
  type BasedStep,
  basedStep,
  type LegForecast,
  type LegQuestion,
  type Skill,
} from '../../ability/index.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import { isAtHand } from './at-hand.ts';
import { relinked } from './chains.ts';
import { oneStep, RAISED_FIELDS, type StepWay } from './one-step.ts';
import type { NextInput } from './session-state.ts';
import type { Success } from './success.ts';

/** A leg of a proposed rep with what the record says of it. */
export interface ProposedLeg extends LaidLeg {
  readonly question: LegQuestion;
  readonly forecast: LegForecast;
  readonly notMissed: number;
  readonly step: BasedStep | null;
}

/** A rep that could be asked. */
export interface Proposal {
  readonly legs: readonly ProposedLeg[];
  /** The leg the rep is about. */
  readonly focus: number;
  /** Chance that the focus leg is not missed, and the least of all legs'. */
  readonly notMissed: number;
  readonly least: number;
  /** Things raised against the bases, counted over the chain; a leg with no success before raises nothing at the easy end. */
  readonly raised: readonly string[];
  /** The greatest stretch of any leg, in logits; 0 when nothing went well before. */
  readonly stretch: number;
  readonly moved: { readonly field: AskField; readonly way: StepWay } | null;
}

/** Legs stated for one input: the same leg comes back in many proposals. */
const STATED = new WeakMap<NextInput, Map<string, ProposedLeg>>();

const ASK_KEYS = new WeakMap<Ask, string>();

/** An ask as text, for looking it up: the same fields in the same order give the same text. */
export function askKey(ask: Ask): string {
  let key = ASK_KEYS.get(ask);
  if (key === undefined) {
    key = JSON.stringify(ask);
    ASK_KEYS.set(ask, key);
  }
  return key;
}

/** A chain as text: the same legs asked alike give the same text. */
export function chainKey(legs: readonly LaidLeg[]): string {
  return legs.map(({ skill, ask }) => skill + askKey(ask)).join('|');
}

const NEVER: readonly Success[] = [];

/** Steps by question and by the successes they were counted from: both come back wherever a session is thought through. */
const STEPS = new WeakMap<LegQuestion, WeakMap<readonly Success[], BasedStep | null>>();

function stepOf(
  filter: NextInput['filter'],
  question: LegQuestion,
  successes: readonly Success[],
): BasedStep | null {
  let steps = STEPS.get(question);
  if (steps === undefined) {
    steps = new WeakMap();
    STEPS.set(question, steps);
  }
  let step = steps.get(successes);
  if (step === undefined) {
    step = basedStep(filter, question, successes);
    steps.set(successes, step);
  }
  return step;
}

function statedLeg(input: NextInput, leg: LaidLeg): ProposedLeg {
  let known = STATED.get(input);
  if (known === undefined) {
    known = new Map();
    STATED.set(input, known);
  }
  const key = leg.skill + askKey(leg.ask);
  let stated = known.get(key);
  if (stated === undefined) {
    stated = new StatedLeg(input, leg);
    known.set(key, stated);
  }
  return stated;
}

/** The base is looked for when it is asked for: most of what could be asked is passed over by its chance alone. */
class StatedLeg implements ProposedLeg {
  readonly skill: Skill;
  readonly ask: Ask;
  readonly question: LegQuestion;
  readonly forecast: LegForecast;
  readonly notMissed: number;
  readonly #input: NextInput;
  #step: BasedStep | null | undefined;

  constructor(input: NextInput, { skill, ask }: LaidLeg) {
    this.skill = skill;
    this.ask = ask;
    this.question = input.question(skill, ask);
    this.forecast = input.filter.forecast(this.question);
    this.notMissed = 1 - this.forecast.chance.missed;
    this.#input = input;
  }

  get step(): BasedStep | null {
    if (this.#step === undefined) {
      const { filter, successes } = this.#input;
      this.#step = stepOf(filter, this.question, successes.get(this.skill) ?? NEVER);
    }
    return this.#step;
  }
}

/** Chance of good of the leg the rep is about: the chance that sentences state (contract). */
export function goodOf(proposal: Proposal): number {
  return proposal.legs[proposal.focus]?.forecast.chance.good ?? 0;
}

/** States chances and steps of a chain, asked now. `focus` is the place of the leg the rep is about. */
export function proposed(
  input: NextInput,
  legs: readonly LaidLeg[],
  focus: number,
  moved: Proposal['moved'] = null,
): Proposal {
  return new StatedProposal(
    legs.map((leg) => statedLeg(input, leg)),
    focus,
    moved,
  );
}

class StatedProposal implements Proposal {
  readonly legs: readonly ProposedLeg[];
  readonly focus: number;
  readonly notMissed: number;
  readonly least: number;
  readonly moved: Proposal['moved'];
  #raised: readonly string[] | null = null;
  #stretch: number | null = null;

  constructor(legs: readonly ProposedLeg[], focus: number, moved: Proposal['moved']) {
    this.legs = legs;
    this.focus = focus;
    this.notMissed = legs[focus]?.notMissed ?? 0;
    let least = 1;
    for (const leg of legs) if (leg.notMissed < least) least = leg.notMissed;
    this.least = least;
    this.moved = moved;
  }

  get raised(): readonly string[] {
    this.#raised ??= [...new Set(this.legs.flatMap((leg) => raisedNames(leg)))];
    return this.#raised;
  }

  get stretch(): number {
    this.#stretch ??= this.legs.reduce((so, leg) => Math.max(so, leg.step?.stretch.mean ?? 0), 0);
    return this.#stretch;
  }
}

/** That day's wind and company: they make an ask harder, and are not the handler's to raise. */
const OF_THE_DAY: ReadonlySet<AskField> = new Set(['windAcrossMPerS', 'crew']);

/** What a leg raises against its base, of what is the handler's to choose. */
export function raisedGroups({ step }: ProposedLeg): readonly (readonly AskField[])[] {
  return (step?.harder ?? []).filter((group) => !group.some((field) => OF_THE_DAY.has(field)));
}

function raisedNames(leg: ProposedLeg): string[] {
  return raisedGroups(leg).map((group) => (group.includes('wayFraction') ? 'distanceM' : (group[0] ?? '')));
}

/** An ask without that day's wind and company (`OF_THE_DAY`). */
function ownAsk(ask: Ask): Ask {
  const { windAcrossMPerS: _wind, crew: _crew, ...own } = ask;
  return own;
}

/** Chains in which the skill lately went well, newest first, each distinct chain once. */
export function knownChains(input: NextInput, skill: Skill): { legs: readonly LaidLeg[]; focus: number }[] {
  const seen = new Map<string, { legs: readonly LaidLeg[]; focus: number }>();
  for (const success of (input.successes.get(skill) ?? []).slice(-10).reverse()) {
    const legs = success.asked.map(({ skill: part, ask }) => ({ skill: part, ask: ownAsk(ask) }));
    const focus = legs.findIndex((leg) => leg.skill === skill);
    const key = JSON.stringify(legs.map((leg) => [leg.skill, leg.ask]));
    if (focus >= 0 && !seen.has(key)) seen.set(key, { legs, focus });
  }
  return [...seen.values()];
}

/** What can be asked of a skill: each known chain as it was, and with one field of its leg one step harder or easier
 * (`ways`); `most` bounds the chains, newest first. */
export function proposals(
  input: NextInput,
  skill: Skill,
  ways: readonly StepWay[] = ['harder', 'easier'],
  most = Number.POSITIVE_INFINITY,
): Proposal[] {
  return knownChains(input, skill)
    .slice(0, most)
    .flatMap(({ legs, focus }) => [
      proposed(input, legs, focus),
      ...ways.flatMap((way) => steps(input, legs, focus, way)),
    ]);
}

/** The chain with each field of its leg moved one step, where it can be. */
export function steps(input: NextInput, legs: readonly LaidLeg[], focus: number, way: StepWay): Proposal[] {
  const leg = legs[focus];
  if (!leg) return [];
  return RAISED_FIELDS[leg.skill].flatMap((field) => {
    const ask = oneStep(leg.ask, leg.skill, field, way);
    const isOpen = ask !== null && (way === 'easier' || isAtHand(input.atHand, { [field]: ask[field] }));
    return isOpen ? [proposed(input, relinked(legs, focus, ask), focus, { field, way })] : [];
  });
}
