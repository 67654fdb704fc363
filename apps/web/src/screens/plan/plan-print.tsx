import type { PlanCard, PlanView } from '@sedgeline/projections';
import { FieldCard } from '../../parts/field-card/field-card.tsx';
import { unbroken } from '../../parts/unbroken.ts';
import { useWords } from '../../parts/words-context.tsx';

/** Up to so many reps have a third of the sheet's height each. */
const ROOMY = 9;

/** The plan on one sheet for the pocket: every rep drawn, asked, laid, with a place for a mark and a note. */
export function PlanPrint({ view, when }: { readonly view: PlanView; readonly when: number }) {
  const { planScreen, plan: say, time, rules } = useWords();
  const { printed } = planScreen;
  const { plan, cards, strip, dogName, groundName } = view;
  const isCrowded = cards.length > ROOMY;
  const broken = plan.rules.filter(({ kept }) => !kept);
  const figures = (['sides', 'clean', 'stops'] as const).map((cell) => planScreen.strip[cell](strip).figure);
  return (
    <section className="plan-print" aria-hidden="true" data-crowded={isCrowded || undefined}>
      <header>
        <h1>{printed.title(dogName, time.date(when))}</h1>
        <p>
          {[groundName, printed.minutes(strip.minutes.p50, strip.minutes.p90), ...figures]
            .filter((part) => part !== null)
            .join(' · ')}
        </p>
        {broken.length > 0 && (
          <p>
            {say.notKept} {broken.map(({ rule }) => rules.title(rule)).join('; ')}.
          </p>
        )}
      </header>
      <ol>
        {cards.map((card) => (
          <PrintedRep
            key={card.rep.n}
            card={card}
            isNarrow={isCrowded}
            pause={plan.breaks.find(({ afterRep }) => afterRep === card.rep.n)?.minutes ?? null}
          />
        ))}
      </ol>
      <footer>
        <h2 className="plan-print-notes">{printed.notes}</h2>
        <p>{printed.foot}</p>
      </footer>
    </section>
  );
}

function PrintedRep({
  card,
  isNarrow,
  pause,
}: {
  readonly card: PlanCard;
  /** Its drawing stands beside its words. */
  readonly isNarrow: boolean;
  readonly pause: number | null;
}) {
  const { planScreen, plan, ask, chances, picture } = useWords();
  const { rep } = card;
  const stop = card.picture.strokes.find((stroke) => stroke.kind === 'stop');
  const whistle = card.picture.strokes.find((stroke) => stroke.kind === 'whistle');
  return (
    <li>
      <h2>
        <span>
          {rep.n} {plan.purpose(rep.purpose)}
        </span>
        <span>{planScreen.printed.chance(chances.inHundred(card.noneMissed))}</span>
      </h2>
      <FieldCard picture={card.picture} size={isNarrow ? 'pocket' : 'small'} />
      <p>
        <b>{unbroken(ask.legs(rep.legs))}.</b>
      </p>
      {stop !== undefined && whistle !== undefined && (
        <p className="plan-print-whistle">
          {unbroken(
            planScreen.printed.whistle(picture.halts(stop.distanceM), picture.blow(whistle.distanceM)),
          )}
        </p>
      )}
      <p>{unbroken(plan.before(rep.before) || plan.nothingToLay)}</p>
      {pause !== null && (
        <p>
          <b>{plan.takesBreak(pause)}</b>
        </p>
      )}
      <i className="plan-print-line" />
    </li>
  );
}
