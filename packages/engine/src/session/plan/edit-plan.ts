import { checkAsk } from '../../ability/index.ts';
import { focusOf } from '../next/chains.ts';
import { alternatives } from './alternatives.ts';
import { measured } from './attempt.ts';
import { isHeld, isKnown, isSure, sendKind, sideOfLegs, stopWay } from './candidates.ts';
import type { DraftRep, Standing, StatedRep } from './draft.ts';
import { standingAfter, stateRep } from './draft.ts';
import type { Stock } from './fill.ts';
import { finishedPlan } from './finished-plan.ts';
import type { Plan } from './plan.ts';
import type { PlanEdit } from './plan-edit.ts';
import type { PlanInput } from './plan-input.ts';
import { type Setting, settingOf } from './setting.ts';
import { fixedSlot, type Slot } from './slots.ts';

/** Sessions longer than this are no sessions. */
const MOST_REPS = 40;

/**
 * A plan with one change of the handler's, every rep stated anew in its new place: chances, steps, what is laid and walked,
 * fall-backs and minutes. Nothing else is changed to suit: what the change breaks is said by the rules. The first rep is a
 * check where it is known, the last a finish where it is sure and raises nothing. `null` where there is nothing else to be
 * asked there, or nothing to change.
 * @throws RangeError for a number that no rep of the plan has, and for an ask that is none
 */
export function editPlan(input: PlanInput, plan: Plan, edit: PlanEdit): Plan | null {
  const setting = settingOf(input);
  const stock = widestStock(setting);
  const drafts = plan.reps.map((rep) => draftOfRep(setting, stock, plan, rep));
  const changed = editedDrafts(setting, stock, drafts, edit);
  if (changed === null || changed.length > MOST_REPS) return null;
  const attempt = measured(stated(stock, changed), setting.pace);
  return { ...finishedPlan(setting, stock, attempt, { isDrawn: false, locksLetGo: 0 }), seed: plan.seed };
}

/** All that any way of filling the session is filled from. */
function widestStock(setting: Setting): Stock {
  const { record, mayAsk } = setting;
  for (const stock of setting.stocks()) return stock;
  return { record, lines: [], mayAsk, hurry: 1 };
}

type PlanRep = Plan['reps'][number];

function draftOfRep({ input }: Setting, { lines }: Stock, plan: Plan, rep: PlanRep): DraftRep {
  const legs = rep.legs.map(({ skill, ask }) => ({ skill, ask }));
  const about = rep.reasons.find(({ skill }) => legs.some((leg) => leg.skill === skill))?.skill;
  const focus = focusOf(legs, about ?? input.request.focus?.skill ?? null);
  const role = rep.purpose === 'check' || rep.purpose === 'finish' ? rep.purpose : 'work';
  const slot: Slot = {
    role,
    line: Math.max(
      0,
      lines.findIndex(({ skills }) => skills.some((skill) => skill === legs[focus]?.skill)),
    ),
    send: sendKind(legs),
    side: sideOfLegs(legs),
    way: stopWay(legs),
    takesBreak: plan.breaks.some(({ afterRep }) => afterRep === rep.n),
    holds: rep.purpose !== 'build',
  };
  return { slot, legs, focus, moved: null };
}

function editedDrafts(
  setting: Setting,
  stock: Stock,
  drafts: readonly DraftRep[],
  edit: PlanEdit,
): DraftRep[] | null {
  switch (edit.do) {
    case 'drop':
      return without(drafts, placeOf(drafts, edit.n));
    case 'move': {
      const from = placeOf(drafts, edit.n);
      const to = placeOf(drafts, edit.to);
      return from === to ? null : moved(drafts, from, to);
    }
    case 'swap': {
      const place = placeOf(drafts, edit.n);
      const other = otherAt(stock, drafts, place, edit.turn, true);
      return other === null ? null : drafts.map((draft, n) => (n === place ? other : draft));
    }
    case 'add': {
      if (edit.after !== 0) placeOf(drafts, edit.after);
      const asked: DraftRep = { slot: addedSlot(stock, drafts), legs: [], focus: 0, moved: null };
      const grown = [...drafts.slice(0, edit.after), asked, ...drafts.slice(edit.after)];
      const added = otherAt(stock, grown, edit.after, edit.turn, false);
      return added === null ? null : grown.map((draft, n) => (n === edit.after ? added : draft));
    }
    case 'ask': {
      const place = placeOf(drafts, edit.n);
      if (edit.legs.length === 0) throw new RangeError('legs: expected one and more, got none');
      for (const { ask } of edit.legs) checkAsk(ask);
      const focus = focusOf(edit.legs, setting.input.request.focus?.skill ?? null);
      return drafts.map((draft, n) =>
        n === place
          ? { slot: fixedSlot(draft.slot, { legs: edit.legs, focus }), legs: edit.legs, focus, moved: null }
          : draft,
      );
    }
    case 'break': {
      const place = placeOf(drafts, edit.after);
      if (drafts[place]?.slot.takesBreak === edit.takes || place === drafts.length - 1) return null;
      return drafts.map((draft, n) => (n === place ? withBreak(draft, edit.takes) : draft));
    }
  }
}

function placeOf(drafts: readonly DraftRep[], n: number): number {
  if (drafts[n - 1] === undefined) {
    throw new RangeError(`n: expected a rep's number 1..${drafts.length}, got ${n}`);
  }
  return n - 1;
}

const withBreak = (draft: DraftRep, takesBreak: boolean): DraftRep => ({
  ...draft,
  slot: { ...draft.slot, takesBreak },
});

/** A break stays between the two halves of the session that it parted. */
function without(drafts: readonly DraftRep[], place: number): DraftRep[] {
  const gone = drafts[place];
  return drafts.flatMap((draft, n) => {
    if (n === place) return [];
    return [n === place - 1 && gone?.slot.takesBreak === true ? withBreak(draft, true) : draft];
  });
}

/** Breaks stay after the same number of reps. */
function moved(drafts: readonly DraftRep[], from: number, to: number): DraftRep[] {
  const order = [...drafts];
  order.splice(to, 0, ...order.splice(from, 1));
  return order.map((draft, n) => withBreak(draft, drafts[n]?.slot.takesBreak === true));
}

/** A rep of work for the line that has the least of what it should, cast to the side that has had less. */
function addedSlot({ lines }: Stock, drafts: readonly DraftRep[]): Slot {
  const works = drafts.filter(({ slot }) => slot.role === 'work');
  const lack = lines.map(
    ({ share }, line) => share * (works.length + 1) - works.filter(({ slot }) => slot.line === line).length,
  );
  const line = Math.max(0, lack.indexOf(Math.max(...lack)));
  const count = (side: 'left' | 'right') => drafts.filter(({ slot }) => slot.side === side).length;
  const side = count('right') > count('left') ? 'left' : 'right';
  const pool = lines[line];
  return {
    role: 'work',
    line,
    send: pool?.send ?? 'none',
    side: pool?.isSided === true ? side : null,
    way: null,
    takesBreak: false,
    holds: false,
  };
}

/** Another rep for a place, stated there; `isSwap` where what is asked there now will not do. */
function otherAt(
  stock: Stock,
  drafts: readonly DraftRep[],
  place: number,
  turn: number,
  isSwap: boolean,
): DraftRep | null {
  const now = drafts[place];
  if (now === undefined) return null;
  const { fixed: _fixed, ...slot } = now.slot;
  const earlier = stated(stock, drafts.slice(0, place));
  const last = earlier.at(-1);
  const at: Standing =
    last === undefined ? { moment: stock.record.start, lying: [] } : standingAfter(stock.record, last);
  const found = alternatives(stock, slot, at, earlier, isSwap ? now.legs : null);
  return found[turn % Math.max(1, found.length)] ?? null;
}

/** Every rep in its place, the first a check and the last a finish where they are such. */
function stated({ record }: Stock, drafts: readonly DraftRep[]): StatedRep[] {
  let at: Standing = { moment: record.start, lying: [] };
  return drafts.map((draft, n) => {
    const isLast = n === drafts.length - 1;
    const here = stateRep(record, at, draft);
    const isCheck = n === 0 && !isLast && (draft.slot.role === 'check' || isKnown(here.proposal));
    const isFinish =
      isLast && isHeld(here.proposal) && (draft.slot.role === 'finish' || isSure(here.proposal));
    const role = isCheck ? 'check' : isFinish ? 'finish' : 'work';
    const rep = stateRep(record, at, { ...draft, slot: { ...draft.slot, role } });
    at = standingAfter(record, rep);
    return rep;
  });
}
