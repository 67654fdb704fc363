import { THING_KINDS } from '@sedgeline/journal';
import { create } from 'zustand';
import { persist } from 'zustand/middleware';
import type { EditedLayout } from '../screens/ground/editor/layout-edit.ts';
import type { RecordName } from '../workers/kennel-calls.ts';

interface LayoutDrafts {
  readonly drafts: Readonly<Record<string, EditedLayout>>;
}

/** Layouts that were drawn and not saved, kept on the device over a reload; none of it is in the record. */
const useLayoutDrafts = create<LayoutDrafts>()(
  persist((): LayoutDrafts => ({ drafts: {} }), { name: 'sedgeline.layouts', version: 1 }),
);

/** What was left unsaved at an address; `null` where nothing was, or where it is damaged. */
export function layoutLeft(key: string): EditedLayout | null {
  const left: unknown = useLayoutDrafts.getState().drafts[key];
  return isLayout(left) ? left : null;
}

export function leaveLayout(key: string, layout: EditedLayout): void {
  useLayoutDrafts.setState(({ drafts }) => ({ drafts: { ...drafts, [key]: layout } }));
}

/** It was saved, or is not wanted. */
export function dropLayout(key: string): void {
  useLayoutDrafts.setState(({ drafts }) => {
    const { [key]: _, ...rest } = drafts;
    return { drafts: rest };
  });
}

/** Everything left unsaved in a record that is gone. */
export function dropLayoutsOf(record: RecordName): void {
  useLayoutDrafts.setState(({ drafts }) => ({
    drafts: Object.fromEntries(Object.entries(drafts).filter(([key]) => !key.startsWith(`["${record}",`))),
  }));
}

/** Where a draft is kept: which record, which ground, which layout. */
export const draftKey = (record: RecordName, ground: string | null, layout: string): string =>
  JSON.stringify([record, ground, layout]);

function isPlace(value: unknown): boolean {
  const place = value as { eastM?: unknown; northM?: unknown } | null;
  return typeof place === 'object' && Number.isFinite(place?.eastM) && Number.isFinite(place?.northM);
}

function isLayout(value: unknown): value is EditedLayout {
  const layout = value as Partial<EditedLayout> | null | undefined;
  if (typeof layout !== 'object' || layout === null || !isPlace(layout.handlerAt)) return false;
  if (layout.sendFrom !== undefined && !isPlace(layout.sendFrom)) return false;
  return (
    Array.isArray(layout.things) &&
    layout.things.every(
      (thing) => isPlace(thing) && typeof thing.thing === 'string' && THING_KINDS.includes(thing.kind),
    )
  );
}
