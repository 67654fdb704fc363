import { isSame, type Part } from '@sedgeline/drawing';
import { useReducer } from 'react';
import { goOn, type History, redo, startHistory, undo } from './edit-history.ts';
import { applyEdit, type Edit, type EditedLayout } from './layout-edit.ts';

interface EditState {
  readonly history: History<EditedLayout>;
  readonly chosen: Part | null;
}

type Step =
  | { readonly step: 'edit'; readonly edit: Edit }
  | { readonly step: 'choose'; readonly part: Part | null }
  | { readonly step: 'undo' | 'redo' }
  | { readonly step: 'replace'; readonly layout: EditedLayout };

function reduce(state: EditState, step: Step): EditState {
  switch (step.step) {
    case 'choose':
      return isSame(state.chosen, step.part) ? state : { ...state, chosen: step.part };
    case 'edit': {
      const history = goOn(state.history, applyEdit(state.history.now, step.edit));
      const chosen: Part | null =
        step.edit.do === 'add'
          ? { part: 'thing', thing: step.edit.thing.thing }
          : step.edit.do === 'send' && step.edit.from !== null
            ? { part: 'send' }
            : state.chosen;
      return { history, chosen: stillThere(chosen, history.now) };
    }
    case 'undo':
    case 'redo': {
      const history = step.step === 'undo' ? undo(state.history) : redo(state.history);
      return { history, chosen: stillThere(state.chosen, history.now) };
    }
    case 'replace':
      return { history: goOn(state.history, step.layout), chosen: null };
  }
}

function stillThere(chosen: Part | null, { things, sendFrom }: EditedLayout): Part | null {
  if (chosen?.part === 'thing') return things.some(({ thing }) => thing === chosen.thing) ? chosen : null;
  return chosen?.part === 'send' && sendFrom === undefined ? { part: 'handler' } : chosen;
}

/** A layout in the making: what is drawn, what is chosen, and every step back. */
export function useLayoutEdit(start: EditedLayout) {
  const [state, step] = useReducer(reduce, start, (layout) => ({
    history: startHistory(layout),
    chosen: null,
  }));
  return { ...state, layout: state.history.now, step };
}

export type StepLayout = ReturnType<typeof useLayoutEdit>['step'];
