import type { Plan, RuleVerdict } from '@sedgeline/engine/session';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** Every rule that is not kept: its name, why, what would mend it, and a key that does it. Nothing where all are kept. */
export function BrokenRules({
  plan,
  onMend,
}: {
  readonly plan: Plan;
  readonly onMend: (verdict: RuleVerdict) => void;
}) {
  const { planScreen, rules } = useWords();
  const broken = plan.rules.filter(({ kept }) => !kept);
  if (broken.length === 0) return <p className="plan-kept">{planScreen.allKept}</p>;
  return (
    <section className="plan-broken" aria-labelledby="plan-broken-title">
      <h2 id="plan-broken-title">{planScreen.notKept(broken.length)}</h2>
      <ul>
        {broken.map((verdict) => (
          <li key={verdict.rule} data-rule={verdict.rule}>
            <p>
              <b>{rules.title(verdict.rule)}.</b> {rules.sentence(verdict)}
              {verdict.couldHaveBeenKept === false && <span className="soft"> {planScreen.nearest}</span>}
            </p>
            {verdict.mend !== undefined && verdict.couldHaveBeenKept !== false && (
              <Button
                aria-label={`${planScreen.mend}: ${rules.title(verdict.rule)}`}
                onClick={() => onMend(verdict)}
              >
                {planScreen.mend}
              </Button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
