import type { Plan, PlanCaution, PlanCautionCode } from '@sedgeline/engine/session';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';
import type { PlanWishes } from '../../state/plan-drafts.ts';

/** Enough for a few reps with their laying out (our judgement, 2026). */
const SOME_MINUTES = 10;

/** No rep can be had: why, and the next step. */
export function PlanEmpty({
  plan,
  wishes,
  onWish,
  onWeather,
}: {
  readonly plan: Plan;
  readonly wishes: PlanWishes;
  readonly onWish: (change: Partial<PlanWishes>) => void;
  readonly onWeather: () => void;
}) {
  const { planScreen, plan: say } = useWords();
  const { empty } = planScreen;
  const has = (code: PlanCautionCode): boolean => plan.cautions.some((caution) => caution.code === code);
  const isHot = has('too-hot-to-work');
  const why = plan.cautions.filter(({ code }) => code !== 'heat' && WHYS.has(code));
  return (
    <section className="plan-empty" aria-labelledby="plan-empty-title">
      <h2 id="plan-empty-title">{empty.title}</h2>
      {why.map((caution) => (
        <p key={caution.code}>{say.caution(caution)}</p>
      ))}
      <div className="plan-empty-keys">
        {isHot && (
          <Button look="main" onClick={onWeather}>
            {empty.weather}
          </Button>
        )}
        {!isHot && wishes.kit !== null && (
          <Button look="main" onClick={() => onWish({ kit: null })}>
            {empty.allKit}
          </Button>
        )}
        {!isHot && plan.minutes < SOME_MINUTES && (
          <Button look="main" onClick={() => onWish({ minutes: SOME_MINUTES })}>
            {empty.moreTime(SOME_MINUTES)}
          </Button>
        )}
        {!isHot && wishes.focus !== null && (
          <Button onClick={() => onWish({ focus: null })}>{empty.anything}</Button>
        )}
      </div>
    </section>
  );
}

/** Cautions that may be why nothing is planned; that of a warm day goes with that of one too hot. */
const WHYS: ReadonlySet<PlanCautionCode> = new Set([
  'too-hot-to-work',
  'heat',
  'little-time',
  'little-kit',
  'nothing-known-yet',
]);

/** Whether a caution is told as the reason why nothing is planned. */
export const isWhyEmpty = ({ code }: PlanCaution): boolean => WHYS.has(code);
