import type { DogsView, StandingView } from '@sedgeline/projections';
import { create } from 'zustand';
import { readMarker, writeMarker } from '../devices/record-marker.ts';
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
  /** Record and second copy, once they were compared. */
  readonly copies: { readonly restored: number; readonly hasCopy: boolean } | null;
  /** How many facts were here when the program was last used, and are gone from both copies. */
  readonly missing: number;
  /** How far the device's time is behind what is on record, whole minutes. */
  readonly behindMinutes: number;
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
  copies: null,
  missing: 0,
  behindMinutes: 0,
  fault: null,
};

const MINUTE_MS = 60_000;

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
      if (!push.rough) rememberRecord();
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
    case 'behind':
      useKennel.setState({ behindMinutes: Math.floor(push.behindMs / MINUTE_MS) });
      break;
    case 'copies': {
      const { restored, hasCopy, facts } = push;
      useKennel.setState({ copies: { restored, hasCopy }, missing: missingFrom(push.record, facts) });
      rememberRecord();
      break;
    }
    case 'record-left':
      break;
  }
}

/** The handler has read what came back or is gone; from here the record is what is there. */
export function dismissKeepingNews(): void {
  const { copies } = useKennel.getState();
  useKennel.setState({ missing: 0, copies: copies === null ? null : { ...copies, restored: 0 } });
  rememberRecord();
}

/** Notes how much there is, so that a loss of everything else can be told: once the copies were compared, and not while a loss stands unread. */
function rememberRecord(): void {
  const { record, copies, missing, dogs, notSaved } = useKennel.getState();
  if (record !== 'mine' || copies === null || missing > 0 || dogs === null) return;
  writeMarker(dogs.facts - (notSaved?.count ?? 0));
}

const missingFrom = (record: RecordName, facts: number): number =>
  record === 'mine' ? Math.max(0, readMarker() - facts) : 0;
