import type { PlanCaution } from '@sedgeline/engine/session';
import { useWords } from '../../parts/words-context.tsx';

/** What this session is to be worked with in mind, and what holds for every one. */
export function PlanCautions({ cautions }: { readonly cautions: readonly PlanCaution[] }) {
  const { planScreen, plan, cautions: always } = useWords();
  const said = new Set<string>(cautions.map(({ code }) => code));
  return (
    <section className="plan-mind" aria-labelledby="plan-mind-title">
      <h2 id="plan-mind-title">{planScreen.inMind}</h2>
      <ul>
        {cautions.map((caution) => (
          <li key={caution.code} data-caution={caution.code}>
            {plan.caution(caution)}
          </li>
        ))}
      </ul>
      <details>
        <summary>{planScreen.always}</summary>
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
