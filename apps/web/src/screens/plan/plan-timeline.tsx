import type { PlanEdit } from '@sedgeline/engine/session';
import type { PlanView } from '@sedgeline/projections';
import { Fragment, type KeyboardEvent, type ReactNode, useRef } from 'react';
import { useWords } from '../../parts/words-context.tsx';
import { BreakCard } from './break-card.tsx';
import { PlanCard } from './plan-card.tsx';
import { useDragOrder } from './use-drag-order.ts';

export interface PlanTimelineProps {
  readonly view: PlanView;
  readonly locked: readonly number[];
  readonly openRep: number | null;
  readonly onOpen: (n: number, isByKey: boolean) => void;
  readonly onEdit: (edit: PlanEdit) => void;
  readonly onSwap: (n: number) => void;
  readonly onLock: (n: number) => void;
  /** The opened card's sheet, where it stands in the list itself. */
  readonly sheet: ReactNode;
}

/** The reps and breaks in order. Arrow keys go from card to card; with Alt they take the card along. */
export function PlanTimeline(props: PlanTimelineProps) {
  const { view, locked, openRep, onOpen, onEdit, onSwap, onLock, sheet } = props;
  const { planScreen } = useWords();
  const list = useRef<HTMLOListElement>(null);
  const { plan, cards } = view;
  const { drag, grip } = useDragOrder(list, (n, to) => onEdit({ do: 'move', n, to }));
  const broken = new Set(plan.rules.flatMap(({ kept, why }) => (kept ? [] : (why?.reps ?? []))));
  const keys = (n: number) => (event: KeyboardEvent<HTMLElement>) => {
    if (event.ctrlKey || event.metaKey) return;
    const way = WAYS[event.key];
    const to = way === undefined ? n : Math.min(cards.length, Math.max(1, n + way));
    if (way !== undefined) {
      if (event.altKey) {
        if (to !== n) onEdit({ do: 'move', n, to });
      } else cardButton(list.current, to)?.focus();
    } else if (event.altKey) return;
    else if (event.key === 'Delete' || event.key === 'Backspace') onEdit({ do: 'drop', n });
    else if (event.key === 's' || event.key === 'S') onSwap(n);
    else if (event.key === 'l' || event.key === 'L') onLock(n);
    else return;
    event.preventDefault();
  };
  return (
    <>
      <ol className="plan-cards" ref={list} aria-label={planScreen.reps}>
        {cards.map((card) => {
          const { n } = card.rep;
          const pause = plan.breaks.find(({ afterRep }) => afterRep === n);
          return (
            <Fragment key={n}>
              <PlanCard
                card={card}
                isOpen={openRep === n}
                isLocked={locked.includes(n)}
                isBroken={broken.has(n)}
                drag={drag}
                grip={grip(n)}
                onOpen={(isByKey) => onOpen(n, isByKey)}
                onKeyDown={keys(n)}
              >
                {openRep === n && sheet}
              </PlanCard>
              {pause !== undefined && (
                <BreakCard
                  minutes={pause.minutes}
                  onDrop={() => onEdit({ do: 'break', after: n, takes: false })}
                />
              )}
            </Fragment>
          );
        })}
      </ol>
      <p className="plan-keys-hint soft not-printed">{planScreen.keysHint}</p>
    </>
  );
}

const WAYS: Readonly<Record<string, 1 | -1>> = { ArrowUp: -1, ArrowLeft: -1, ArrowDown: 1, ArrowRight: 1 };

/** The key that opens a card. */
export function cardButton(within: ParentNode | null, n: number): HTMLElement | null {
  return within?.querySelector<HTMLElement>(`[data-rep="${n}"] .plan-card-open`) ?? null;
}
