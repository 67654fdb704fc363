import type { PlanCaution, PlanCautionCode } from '@sedgeline/engine/session';
import { LinkSummary } from '../../parts/link-summary.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** What must be seen before the reps are looked at. */
const WEIGHTY: ReadonlySet<PlanCautionCode> = new Set([
  'heat',
  'joints',
  'locks-let-go',
  'little-time',
  'little-kit',
]);

/** The cautions that stand over the timeline; nothing where there are none. */
export function WeightyCautions({ cautions }: { readonly cautions: readonly PlanCaution[] }) {
  const { plan } = useWords();
  const weighty = cautions.filter(({ code }) => WEIGHTY.has(code));
  if (weighty.length === 0) return null;
  return (
    <ul className="plan-weighty">
      {weighty.map((caution) => (
        <li key={caution.code} data-caution={caution.code}>
          {plan.caution(caution)}
        </li>
      ))}
    </ul>
  );
}

/** What this session is to be worked with in mind, and what holds for every one. */
export function PlanCautions({ cautions }: { readonly cautions: readonly PlanCaution[] }) {
  const { planScreen, plan, cautions: always } = useWords();
  const rest = cautions.filter(({ code }) => !WEIGHTY.has(code));
  const said = new Set<string>(cautions.map(({ code }) => code));
  return (
    <section className="plan-mind" aria-labelledby="plan-mind-title">
      <h2 id="plan-mind-title">{planScreen.inMind}</h2>
      <ul>
        {rest.map((caution) => (
          <li key={caution.code} data-caution={caution.code}>
            {plan.caution(caution)}
          </li>
        ))}
      </ul>
      <details>
        <LinkSummary>{planScreen.always}</LinkSummary>
        <ul>
          {always.list
            .filter(({ code }) => !said.has(code))
            .map(({ code, title, text }) => (
              <li key={code}>
                <b>{title}.</b> {text}
              </li>
            ))}
        </ul>
      </details>
    </section>
  );
}
