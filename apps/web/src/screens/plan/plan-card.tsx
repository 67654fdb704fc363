import type { Reason } from '@sedgeline/engine/session';
import type { PlanCard as PlanCardView } from '@sedgeline/projections';
import type { CSSProperties, KeyboardEvent, PointerEvent, ReactNode } from 'react';
import { ChanceBar } from '../../parts/chance-bar/chance-bar.tsx';
import { FieldCard } from '../../parts/field-card/field-card.tsx';
import { unbroken } from '../../parts/unbroken.ts';
import { useWords } from '../../parts/words-context.tsx';
import type { Drag } from './use-drag-order.ts';

export interface PlanCardProps {
  readonly card: PlanCardView;
  readonly isOpen: boolean;
  readonly isLocked: boolean;
  readonly isBroken: boolean;
  readonly drag: Drag | null;
  readonly grip: {
    readonly onPointerDown: (event: PointerEvent<HTMLElement>) => void;
    readonly onPointerMove: (event: PointerEvent<HTMLElement>) => void;
    readonly onPointerUp: () => void;
    readonly onPointerCancel: () => void;
  };
  readonly onOpen: (isByKey: boolean) => void;
  readonly onKeyDown: (event: KeyboardEvent<HTMLElement>) => void;
  /** The opened card's own sheet, where it stands in the list. */
  readonly children?: ReactNode;
}

/** A rep of the plan, small: what it is for, drawn, asked, how likely, and what changed since it last went well. */
export function PlanCard(props: PlanCardProps) {
  const { card, isOpen, isLocked, isBroken, drag, grip, onOpen, onKeyDown, children } = props;
  const { planScreen, plan, ask, chances, reasons, picture } = useWords();
  const { rep } = card;
  const asked = ask.legs(rep.legs);
  const [first] = rep.reasons;
  const isHeld = drag?.n === rep.n;
  const moved: CSSProperties | undefined = isHeld
    ? { transform: `translate(${drag.dx}px, ${drag.dy}px)` }
    : undefined;
  return (
    <li
      className="plan-card"
      data-rep={rep.n}
      data-open={isOpen || undefined}
      data-locked={isLocked || undefined}
      data-broken={isBroken || undefined}
      data-held={isHeld || undefined}
      data-over={(drag !== null && !isHeld && drag.over === rep.n) || undefined}
      style={moved}
    >
      <h2 className="plan-card-head">
        <button
          type="button"
          className="plan-card-open"
          aria-expanded={isOpen}
          aria-label={planScreen.open(rep.n, `${plan.purpose(rep.purpose)}. ${asked}`)}
          aria-keyshortcuts="Alt+ArrowUp Alt+ArrowDown Delete S L"
          onClick={(event) => onOpen(event.detail === 0)}
          onKeyDown={onKeyDown}
        >
          <b>{rep.n}</b> {plan.purpose(rep.purpose)}
        </button>
        {isLocked && <LockMark label={planScreen.locked} />}
      </h2>
      {/* Pointers alone drag: by keyboard the card's own keys move it. */}
      <span className="plan-card-grip" aria-hidden="true" title={planScreen.grip(rep.n)} {...grip}>
        <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
          <path d="M9 6h.01M15 6h.01M9 12h.01M15 12h.01M9 18h.01M15 18h.01" />
        </svg>
      </span>
      <div className="plan-card-picture">
        <FieldCard picture={card.picture} size="small" title={`${picture.title}, ${planScreen.rep(rep.n)}`} />
      </div>
      <p className="plan-card-ask">{unbroken(asked)}</p>
      <div className="plan-card-bar">
        <ChanceBar
          thin
          of={`${planScreen.rep(rep.n)}, ${planScreen.noneMissed}`}
          chance={card.noneMissed}
          interval90={card.interval90}
        />
        <span className="figures">{chances.plain(card.noneMissed)}</span>
      </div>
      <p className="plan-card-why">{first === undefined ? '' : reasons.sentence(bare(first))}</p>
      {children}
    </li>
  );
}

/** A reason without its chances: the card's one chance is that of the whole rep. */
const bare = (reason: Reason): Reason => ({ ...reason, chanceBefore: undefined, chanceNow: undefined });

function LockMark({ label }: { readonly label: string }) {
  return (
    <svg className="plan-lock" viewBox="0 0 24 24" width="20" height="20" role="img" aria-label={label}>
      <path d="M6 11h12v9H6zM8.5 11V8a3.5 3.5 0 0 1 7 0v3" />
    </svg>
  );
}
