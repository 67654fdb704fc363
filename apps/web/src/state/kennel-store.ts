import type { DogsView, StandingView } from '@sedgeline/projections';
import { create } from 'zustand';
import type { KennelPush, NotSaved, RecordName, WorkScreen } from '../workers/kennel-calls.ts';

/** What the screens show: the worker's latest views. Screens select narrow slices of it. */
export interface KennelState {
  readonly record: RecordName;
  /** Facts are read and views are true; before that they come from the last checkpoint. */
  readonly isReady: boolean;
  readonly dogs: DogsView | null;
  readonly standing: { readonly dog: string; readonly view: StandingView | null } | null;
  readonly work: {
    readonly session: string;
    readonly isRough: boolean;
    readonly screen: WorkScreen | null;
  } | null;
  readonly notSaved: NotSaved | null;
  readonly damage: readonly { readonly where: string; readonly message: string }[];
  /** What could not even be started (the worker itself), in the browser's words. */
  readonly fault: string | null;
}

const EMPTY: Omit<KennelState, 'record'> = {
  isReady: false,
  dogs: null,
  standing: null,
  work: null,
  notSaved: null,
  damage: [],
  fault: null,
};

export const useKennel = create<KennelState>()(() => ({ record: 'mine', ...EMPTY }));

/** Another record is being opened: nothing of the last one stays on the screen. */
export function startRecord(record: RecordName): void {
  useKennel.setState({ record, ...EMPTY });
}

/** Takes a view that the worker sent; one of a record that was left meanwhile is let fall. */
export function takePush(push: KennelPush): void {
  if (push.record !== useKennel.getState().record) return;
  switch (push.view) {
    case 'dogs':
      useKennel.setState({ dogs: push.dogs, isReady: !push.rough });
      break;
    case 'standing':
      useKennel.setState({ standing: { dog: push.dog, view: push.standing } });
      break;
    case 'work':
      useKennel.setState({ work: { session: push.session, isRough: push.rough, screen: push.work } });
      break;
    case 'not-saved':
      useKennel.setState({ notSaved: push.notSaved });
      break;
    case 'damage':
      useKennel.setState({ damage: push.damage });
      break;
    case 'record-left':
      break;
  }
}
