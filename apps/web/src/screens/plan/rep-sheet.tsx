import type { LaidLeg, PlanEdit } from '@sedgeline/engine/session';
import type { PlanCard } from '@sedgeline/projections';
import type { Ref } from 'react';
import { ChanceBar } from '../../parts/chance-bar/chance-bar.tsx';
import { FieldCard } from '../../parts/field-card/field-card.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { RepByHand } from './rep-by-hand.tsx';
import { RepKeys } from './rep-keys.tsx';

export interface RepSheetProps {
  readonly card: PlanCard;
  readonly dogName: string;
  readonly reps: number;
  readonly isLocked: boolean;
  readonly takesBreak: boolean;
  readonly titleRef?: Ref<HTMLHeadingElement>;
  readonly onEdit: (edit: PlanEdit) => void;
  readonly onSwap: () => void;
  readonly onAdd: () => void;
  readonly onLock: () => void;
}

const bare = (legs: readonly LaidLeg[]): readonly LaidLeg[] => legs.map(({ skill, ask }) => ({ skill, ask }));

/** A rep in full: drawn large, leg by leg, what to lay, why, what if it goes wrong, and everything that can be done with it. */
export function RepSheet(props: RepSheetProps) {
  const { card, dogName, reps, isLocked, takesBreak, titleRef, onEdit, onSwap, onAdd, onLock } = props;
  const { planScreen, plan, ask, chances, reasons, picture } = useWords();
  const { rep } = card;
  return (
    <section className="rep-sheet" aria-label={planScreen.rep(rep.n)} data-sheet={rep.n}>
      <h3 className="rep-sheet-title" ref={titleRef} tabIndex={-1}>
        {planScreen.rep(rep.n)}: {ask.rep(rep.legs)}
      </h3>
      <FieldCard
        picture={card.picture}
        size="low"
        dogName={dogName}
        title={`${picture.title}, ${planScreen.rep(rep.n)}`}
      />
      <ChanceBar of={planScreen.noneMissed} chance={card.noneMissed} interval90={card.interval90} />
      <RepKeys
        n={rep.n}
        reps={reps}
        isLocked={isLocked}
        takesBreak={takesBreak}
        onEasier={() => onEdit({ do: 'ask', n: rep.n, legs: bare(rep.easier.legs) })}
        onEdit={onEdit}
        onSwap={onSwap}
        onAdd={onAdd}
        onLock={onLock}
      />
      <RepByHand legs={bare(rep.legs)} onSet={(legs) => onEdit({ do: 'ask', n: rep.n, legs })} />
      <dl className="rep-sheet-facts">
        <div>
          <dt>{planScreen.before}</dt>
          <dd>{plan.before(rep.before) || plan.nothingToLay}</dd>
        </div>
        <div>
          <dt>{planScreen.why}</dt>
          {reasons.all(rep.reasons).map((sentence) => (
            <dd key={sentence}>{sentence}</dd>
          ))}
        </div>
        <div>
          <dt>{planScreen.ifWrong}</dt>
          <dd>{ask.legs(rep.easier.legs)}.</dd>
        </div>
      </dl>
      <table className="rep-sheet-legs figures">
        <caption>{planScreen.legs}</caption>
        <tbody>
          {rep.legs.map((leg, at) => (
            <tr key={`${leg.skill} ${at}`}>
              <th scope="row">{ask.leg(leg)}</th>
              <td>
                {chances.shortInterval(1 - leg.chance.missed, leg.interval90.notMissed)}
                <small>{planScreen.step(leg.stretch)}</small>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
