import type { PlanEdit, PlanWeather, RuleVerdict } from '@sedgeline/engine/session';
import type { PlanView } from '@sedgeline/projections';
import { useCallback, useEffect, useRef, useState } from 'react';
import { editedPlanOf, leftPlanOf, planOf } from '../../state/kennel.ts';
import { leavePlan, type PlanWishes, planLeft, wishesOf } from '../../state/plan-drafts.ts';
import type { RecordName } from '../../workers/kennel-calls.ts';
import { daySeed } from './day-seed.ts';
import { locksFound } from './locks-found.ts';
import { mendWays } from './mend-ways.ts';
import { locksAfter } from './number-after.ts';

/** A plan in the making with all that it was made from: what undo brings back. */
export interface PlanState {
  readonly view: PlanView;
  readonly wishes: PlanWishes;
  readonly weather: PlanWeather;
  readonly seed: number;
  readonly locked: readonly number[];
}

/** What a change of the plan came to. */
export type PlanChange = 'changed' | 'nothing-else' | 'failed' | 'left';

export interface PlanInUse {
  /** `null` until the first plan is there. */
  readonly state: PlanState | null;
  /** What is wanted, also before the plan for it is there. */
  readonly wishes: PlanWishes;
  readonly weather: PlanWeather;
  readonly isBusy: boolean;
  readonly hasFailed: boolean;
  readonly canUndo: boolean;
  readonly wish: (change: Partial<PlanWishes>, weather?: PlanWeather) => Promise<PlanChange>;
  readonly another: () => Promise<PlanChange>;
  readonly edit: (edit: PlanEdit) => Promise<PlanChange>;
  readonly mend: (verdict: RuleVerdict) => Promise<PlanChange>;
  readonly lock: (n: number) => void;
  readonly undo: () => void;
  /** A number for the next swap or addition, another each time. */
  readonly nextTurn: () => number;
}

const UNDO_AT_MOST = 50;
const NO_WEATHER: PlanWeather = {};

const keptOf = ({ view, locked }: PlanState) =>
  locked.flatMap((n) => {
    const rep = view.plan.reps[n - 1];
    return rep === undefined ? [] : [{ n, legs: rep.legs.map(({ skill, ask }) => ({ skill, ask })) }];
  });

const brokenIn = ({ view }: PlanState): number => view.plan.rules.filter(({ kept }) => !kept).length;
const isKept = ({ view }: PlanState, { rule }: RuleVerdict): boolean =>
  view.plan.rules.some((one) => one.rule === rule && one.kept);

/** The plan of one dog: planned at once with what was wanted last time, or as it was left; every change can be undone. */
export function usePlan(record: RecordName, dog: string, legs: number): PlanInUse {
  const [state, setState] = useState<PlanState | null>(null);
  const [wishes, setWishes] = useState(() => wishesOf(record, dog));
  const [weather, setWeather] = useState(NO_WEATHER);
  const [past, setPast] = useState<readonly PlanState[]>([]);
  const [waiting, setWaiting] = useState(0);
  const [hasFailed, setFailed] = useState(false);
  /** What the next change begins from: changes are made one after the other, however fast they are asked for. */
  const now = useRef<PlanState | null>(null);
  const wanted = useRef({ wishes, weather });
  const queue = useRef<Promise<unknown>>(Promise.resolve());
  const asked = useRef(0);
  const turns = useRef(0);

  const show = useCallback(
    (next: PlanState, isUndo = false) => {
      const before = now.current;
      now.current = next;
      setState(next);
      if (!isUndo && before !== null) setPast((all) => [...all, before].slice(-UNDO_AT_MOST));
      const { view, seed, locked } = next;
      const { request, plan, atMs } = view;
      leavePlan(record, dog, next.wishes, {
        request,
        plan,
        atMs,
        seed,
        locked,
        legs,
        weather: next.weather,
      });
    },
    [record, dog, legs],
  );
  const inTurn = useCallback((job: () => Promise<PlanChange>): Promise<PlanChange> => {
    setWaiting((n) => n + 1);
    const done = queue.current.then(job).then(
      (change) => {
        if (change !== 'left') setFailed(false);
        return change;
      },
      (): PlanChange => {
        setFailed(true);
        return 'failed';
      },
    );
    queue.current = done.then(() => setWaiting((n) => n - 1));
    return done;
  }, []);
  /** Plans anew for what is wanted now, the locked reps kept in their places. */
  const planned = useCallback(
    async (
      seedOf: (before: number | null) => number,
      mayShow: (next: PlanState) => boolean = () => true,
    ): Promise<PlanChange> => {
      const before = now.current;
      const { wishes: wish, weather: day } = wanted.current;
      const seed = seedOf(before?.seed ?? null);
      const kept = before === null ? [] : keptOf(before);
      const { minutes, where, kit, focus } = wish;
      const view = await planOf({
        wish: {
          dog,
          minutes,
          where,
          weather: day,
          ...(kit === null ? {} : { kit }),
          ...(focus === null ? {} : { focus: { skill: focus } }),
        },
        seed,
        kept,
      });
      if (view === null) return 'nothing-else';
      const locked = locksFound(kept, view.plan);
      const next = { view, wishes: wish, weather: day, seed, locked };
      if (!mayShow(next)) return 'nothing-else';
      show(next);
      return 'changed';
    },
    [dog, show],
  );

  useEffect(() => {
    const left = planLeft(record, dog, legs, Date.now());
    void inTurn(async () => {
      const fresh = daySeed(dog, Date.now());
      if (left === null) return planned(() => fresh);
      const view = await leftPlanOf(left);
      if (view === null) return planned(() => fresh);
      const wish = wishesOf(record, dog);
      wanted.current = { wishes: wish, weather: left.weather };
      setWeather(left.weather);
      show({ view, wishes: wish, weather: left.weather, seed: left.seed, locked: left.locked }, true);
      return 'changed';
    });
  }, [record, dog, legs, inTurn, planned, show]);

  /** The plan with some edits, `null` where one of them comes to nothing; not shown yet. */
  const tried = async (edits: readonly PlanEdit[]): Promise<PlanState | null> => {
    const before = now.current;
    if (before === null) return null;
    let { view, locked } = before;
    for (const edit of edits) {
      const { request, plan, atMs } = view;
      const next = await editedPlanOf({ request, plan, atMs, edit });
      if (next === null) return null;
      view = next;
      locked = locksAfter(edit, locked);
    }
    return { ...before, view, locked };
  };
  const edited = async (edit: PlanEdit): Promise<PlanChange> => {
    const next = await tried([edit]);
    if (next === null) return 'nothing-else';
    show(next);
    return 'changed';
  };
  /** The first way to mend that the judge of plans lets pass; where none does, a plan drawn anew round the locked reps, if that keeps it. */
  const mended = async (verdict: RuleVerdict): Promise<PlanChange> => {
    const before = now.current;
    if (before === null) return 'nothing-else';
    for (const way of mendWays(verdict, before.view.plan, before.locked)) {
      const next = await tried(way);
      if (next === null || brokenIn(next) >= brokenIn(before)) continue;
      if (!isKept(next, verdict)) continue;
      show(next);
      return 'changed';
    }
    return planned(
      (seed) => (seed ?? 0) + 1,
      (next) => isKept(next, verdict),
    );
  };
  const nextTurn = (): number => turns.current++;
  const another = () => inTurn(() => planned((seed) => (seed ?? 0) + 1));

  return {
    state,
    wishes,
    weather,
    isBusy: waiting > 0,
    hasFailed,
    canUndo: past.length > 0,
    wish: (change, day = wanted.current.weather) => {
      wanted.current = { wishes: { ...wanted.current.wishes, ...change }, weather: day };
      setWishes(wanted.current.wishes);
      setWeather(day);
      const mine = ++asked.current;
      // Of wishes that come faster than plans only the last is planned for.
      return inTurn(async () => (mine === asked.current ? planned((seed) => seed ?? 0) : 'left'));
    },
    another,
    edit: (edit) => inTurn(() => edited(edit)),
    mend: (verdict) => inTurn(() => mended(verdict)),
    lock: (n) => {
      const before = now.current;
      if (before === null) return;
      const isLocked = before.locked.includes(n);
      const locked = isLocked ? before.locked.filter((one) => one !== n) : [...before.locked, n];
      show({ ...before, locked: locked.toSorted((a, b) => a - b) });
    },
    undo: () => {
      const last = past.at(-1);
      if (last === undefined) return;
      setPast(past.slice(0, -1));
      wanted.current = { wishes: last.wishes, weather: last.weather };
      setWishes(last.wishes);
      setWeather(last.weather);
      show(last, true);
    },
    nextTurn,
  };
}
