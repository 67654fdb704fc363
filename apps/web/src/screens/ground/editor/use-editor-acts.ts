import { type GroundScale, isSame, type Part } from '@sedgeline/drawing';
import type { PlanePoint, Thing } from '@sedgeline/engine/ground';
import type { Words } from '@sedgeline/words';
import { type KeyboardEvent, useCallback } from 'react';
import { announce } from '../../../parts/announcer.tsx';
import { boardKey, movedBy } from './board-keys.ts';
import { freePlace } from './free-place.ts';
import { applyEdit, type EditedLayout } from './layout-edit.ts';
import { figuresOfPart, nameOfPart, originOfPart, partsOf, placeOfPart } from './parts-of-layout.ts';
import type { StepLayout } from './use-layout-edit.ts';
import { toWholePaces } from './whole-paces.ts';

export interface Editing {
  readonly layout: EditedLayout;
  readonly chosen: Part | null;
  readonly names: ReadonlyMap<string, string>;
  readonly scale: GroundScale;
  readonly snaps: boolean;
  readonly words: Words;
  readonly newId: () => string;
  readonly step: StepLayout;
}

/** What pointer and keys do to a layout, each said aloud. */
export function useEditorActs({ layout, chosen, names, scale, snaps, words, newId, step }: Editing) {
  const { said, kind, blind } = words.ground.editor;
  const move = useCallback(
    (part: Part, to: PlanePoint) => step({ step: 'edit', edit: { do: 'move', part, to } }),
    [step],
  );
  const settle = useCallback(
    (part: Part, to: PlanePoint): PlanePoint => {
      const from = originOfPart(part, layout);
      return snaps && from !== null ? toWholePaces(from, to) : to;
    },
    [layout, snaps],
  );
  const add = useCallback(
    (what: Pick<Thing, 'kind' | 'blind'>, at?: PlanePoint) => {
      const { eastM, northM } = at ?? settle({ part: 'send' }, freePlace(layout, scale.upDeg));
      const how = what.kind === 'dummy' ? { how: 'placed' as const } : {};
      step({
        step: 'edit',
        edit: { do: 'add', thing: { thing: newId(), ...what, ...how, eastM, northM } },
      });
      announce(said.added(what.blind === true ? blind : kind(what.kind)));
    },
    [layout, scale, settle, newId, step, said, kind, blind],
  );
  const wholePaces = useCallback(() => {
    const at = chosen === null ? null : placeOfPart(chosen, layout);
    const from = chosen === null ? null : originOfPart(chosen, layout);
    if (chosen !== null && at !== null && from !== null) move(chosen, toWholePaces(from, at));
  }, [chosen, layout, move]);
  const remove = useCallback(() => {
    if (chosen?.part !== 'thing') return;
    const parts = partsOf(layout);
    const next = parts[parts.findIndex((part) => isSame(part, chosen)) + 1] ?? parts.at(-2) ?? null;
    step({ step: 'edit', edit: { do: 'remove', thing: chosen.thing } });
    step({ step: 'choose', part: next });
    announce(said.removed(nameOfPart(chosen, names, words)));
  }, [chosen, layout, names, words, said, step]);
  const takeBack = useCallback(
    (way: 'undo' | 'redo') => {
      step({ step: way });
      announce(way === 'undo' ? said.undone : said.redone);
    },
    [step, said],
  );
  const onKey = useCallback(
    (event: KeyboardEvent) => {
      const pressed = boardKey(event, words.tongue.unitM);
      if (pressed === null) return;
      event.preventDefault();
      const at = chosen === null ? null : placeOfPart(chosen, layout);
      switch (pressed.key) {
        case 'move': {
          if (chosen === null || at === null) return;
          const to = movedBy(at, pressed, scale.upDeg);
          move(chosen, to);
          const moved = applyEdit(layout, { do: 'move', part: chosen, to });
          announce(said.moved(nameOfPart(chosen, names, words), figuresOfPart(chosen, moved, words)));
          return;
        }
        case 'add':
          return add(pressed.what);
        case 'remove':
          return remove();
        case 'paces':
          return wholePaces();
        case 'undo':
        case 'redo':
          return takeBack(pressed.key);
        case 'let-go':
          return step({ step: 'choose', part: null });
      }
    },
    [chosen, layout, names, scale, words, said, move, add, remove, wholePaces, takeBack, step],
  );
  return { move, settle, add, wholePaces, takeBack, onKey };
}
