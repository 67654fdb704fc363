import type { Skill } from '@sedgeline/engine/ability';
import type { PlanKit, PlanWeather } from '@sedgeline/engine/session';
import { create } from 'zustand';
import { persist } from 'zustand/middleware';
import type { RecordName } from '../workers/kennel-calls.ts';
import type { GroundWish, PlanInHand } from '../workers/planning-desk.ts';

/** What the handler wants for a dog each time, until he says otherwise. */
export interface PlanWishes {
  readonly minutes: number;
  readonly where: GroundWish;
  /** `null`: as much as it takes. */
  readonly kit: PlanKit | null;
  readonly focus: Skill | null;
}

/** A plan that was left in the making. */
export interface LeftPlan extends PlanInHand {
  readonly seed: number;
  readonly locked: readonly number[];
  readonly weather: PlanWeather;
  /** Legs on record of the dog when it was made: with more of them it is planned anew. */
  readonly legs: number;
}

interface PlanDrafts {
  readonly wishes: Readonly<Record<string, PlanWishes>>;
  readonly left: Readonly<Record<string, LeftPlan>>;
}

const FIRST: PlanWishes = { minutes: 15, where: { by: 'last' }, kit: null, focus: null };
/** A plan that was left goes stale with the day's weather and form (our judgement, 2026). */
const STALE_AFTER_MS = 12 * 3_600_000;

/** Plans in the making, dog by dog, kept on the device; none of it is in the record. */
const usePlanDrafts = create<PlanDrafts>()(
  persist((): PlanDrafts => ({ wishes: {}, left: {} }), { name: 'sedgeline.plans', version: 1 }),
);

const keyOf = (record: RecordName, dog: string): string => `${record} ${dog}`;

export const wishesOf = (record: RecordName, dog: string): PlanWishes =>
  usePlanDrafts.getState().wishes[keyOf(record, dog)] ?? FIRST;

/** The plan that was left for a dog, if the record and the day are still those it was made for. */
export function planLeft(record: RecordName, dog: string, legs: number, nowMs: number): LeftPlan | null {
  const left = usePlanDrafts.getState().left[keyOf(record, dog)];
  if (left === undefined || left.legs !== legs || nowMs - left.atMs > STALE_AFTER_MS) return null;
  return left;
}

/** Keeps what is wanted and what is planned, over a reload. */
export function leavePlan(record: RecordName, dog: string, wishes: PlanWishes, left: LeftPlan): void {
  const key = keyOf(record, dog);
  usePlanDrafts.setState((all) => ({
    wishes: { ...all.wishes, [key]: wishes },
    left: { ...all.left, [key]: left },
  }));
}

/** The plan was worked, or its record is gone: it is no longer in the making. */
export function dropPlans(isOf: { readonly record: RecordName; readonly dog?: string }): void {
  const isGone = (key: string): boolean =>
    isOf.dog === undefined ? key.startsWith(`${isOf.record} `) : key === keyOf(isOf.record, isOf.dog);
  const without = <Value>(all: Readonly<Record<string, Value>>): Record<string, Value> =>
    Object.fromEntries(Object.entries(all).filter(([key]) => !isGone(key)));
  usePlanDrafts.setState((all) => ({
    wishes: isOf.dog === undefined ? without(all.wishes) : all.wishes,
    left: without(all.left),
  }));
}
