import type { Skill } from '@sedgeline/engine/ability';
import type {
  FilmBenchView,
  GoalForecastView,
  PatternsView,
  PlanView,
  ProgressView,
  ProofingView,
  RepHistoryView,
  SeasonView,
  SessionBackView,
  SessionsView,
  TapFact,
  WhyView,
} from '@sedgeline/projections';
import type { GroundsView } from '../workers/ground-desk.ts';
import type { KennelCalls, KennelPush, RecordName, Tap, TapAnswer } from '../workers/kennel-calls.ts';
import type { ListenCalls } from '../workers/listen-desk.ts';
import type { PlanningCalls } from '../workers/planning-desk.ts';
import { callThrough, type Remote } from '../workers/rpc.ts';
import { startWorker } from './kennel-port.ts';
import { startRecord, takePush, useKennel } from './kennel-store.ts';
import { dropLayoutsOf } from './layout-drafts.ts';
import { dropListenedOf } from './listened-drafts.ts';
import { dropPlans } from './plan-drafts.ts';
import { useSettings } from './settings.ts';
import { voicesOf } from './voices-of.ts';

let remote: Remote<KennelCalls> | null = null;

/** The worker's other end, made once. Failures of the worker itself are told on the screen. */
function worker(): Remote<KennelCalls> {
  if (remote !== null) return remote;
  const port = startWorker();
  port.addEventListener('error', (event) => useKennel.setState({ fault: event.message || 'worker' }));
  remote = callThrough<KennelCalls, KennelPush>(port, (push) => {
    takePush(push);
    if (push.view === 'record-left') void openRecord('mine');
  });
  return remote;
}

/** Opens a record and makes it the one in use; resolves with the session that is open in it. */
export async function openRecord(record: RecordName): Promise<string | null> {
  startRecord(record);
  useSettings.getState().set({ record });
  const { openSession } = await worker().open(record);
  return openSession;
}

/** Resolves when the record in use has been read. */
function recordRead(): Promise<void> {
  return new Promise((resolve) => {
    const look = ({ isReady }: { readonly isReady: boolean }): boolean => {
      if (isReady) resolve();
      return isReady;
    };
    if (look(useKennel.getState())) return;
    const stop = useKennel.subscribe((state) => {
      if (look(state)) stop();
    });
  });
}

/** Leaves the invented record: its database is deleted, the handler's own is opened. */
export async function leaveDemo(): Promise<void> {
  await worker().leaveDemo();
  await voicesOf('demo').clear();
  dropPlans({ record: 'demo' });
  dropLayoutsOf('demo');
  dropListenedOf('demo');
  await openRecord('mine');
}

/** Adds facts; resolves when they are on disk (`saved`) or kept in memory. */
export function append(facts: readonly TapFact[]): Promise<{ readonly saved: boolean }> {
  return worker().append(facts);
}

/** A tap on Work, as made on the screen that is shown; resolves when it is on disk. */
export async function tapWork(tap: Tap): Promise<TapAnswer> {
  const { work } = useKennel.getState();
  if (work === null || work.isRough || work.screen === null) return { kind: 'stale' };
  return worker().tap({ session: work.session, turnCount: work.screen.turnCount, tap });
}

export const watchStanding = (dog: string | null): Promise<void> => worker().watch({ standing: dog });
export const watchSession = (session: string): Promise<void> => worker().watch({ session });
export const historyOf = (rep: string): Promise<RepHistoryView | null> => worker().history(rep);
export const whyOf = (rep: string): Promise<WhyView | null> => worker().why(rep);
export const patternsOf = (dog: string): Promise<PatternsView | null> => worker().patterns(dog);
export const progressOf = (dog: string, skill: Skill): Promise<ProgressView | null> =>
  worker().progress({ dog, skill });
export const proofingOf = (dog: string, skill: Skill): Promise<ProofingView | null> =>
  worker().proofing({ dog, skill });
export const planOf = (of: Parameters<PlanningCalls['plan']>[0]): Promise<PlanView | null> =>
  worker().plan(of);
export const editedPlanOf = (of: Parameters<PlanningCalls['editPlan']>[0]): Promise<PlanView | null> =>
  worker().editPlan(of);
export const leftPlanOf = (of: Parameters<PlanningCalls['showPlan']>[0]): Promise<PlanView | null> =>
  worker().showPlan(of);
export const seasonOf = (dog: string): Promise<SeasonView | null> => worker().season(dog);
export const forecastOf = (goal: string, perWeek: number | null): Promise<GoalForecastView | null> =>
  worker().forecast({ goal, perWeek });
export const groundsOf = (): Promise<GroundsView> => worker().grounds();
export const filmBenchOf = (session: string): Promise<FilmBenchView | null> => worker().filmBench(session);
export const sessionsBack = (): Promise<SessionsView> => worker().sessions();
export const sessionBackOf = (session: string): Promise<SessionBackView | null> =>
  worker().sessionBack(session);
/** The calls of Listen, as they are. */
export const listenDesk = (): Remote<ListenCalls> => worker();
export const spokenOf = (ids: readonly string[]): Promise<readonly string[]> => worker().spokenOf(ids);
export const refreshWork = (): Promise<void> => worker().refresh();
export const retrySaving = (): Promise<{ readonly saved: boolean }> => worker().retry();
/** The record as lines, once it has been read. */
export const factsAsLines = async (): Promise<string> => {
  await recordRead();
  return worker().factsAsLines();
};
/** Brings an export back, once the record has been read: a file may be chosen before. */
export const bringBack = async (text: string): ReturnType<Remote<KennelCalls>['bringBack']> => {
  await recordRead();
  return worker().bringBack(text);
};
export const notSavedAsLines = (): Promise<string> => worker().notSavedAsLines();

/** Identity of something new: 122 random bits. */
export const newId = (): string => crypto.randomUUID();
