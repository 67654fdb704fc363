import type { Plan, RuleVerdict } from '@sedgeline/engine/session';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { mendEdits } from './mend-edits.ts';

/** Every rule that is not kept: its name, why, what would mend it, and a key that does it. Nothing where all are kept. */
export function BrokenRules({
  plan,
  locked,
  onMend,
}: {
  readonly plan: Plan;
  readonly locked: readonly number[];
  readonly onMend: (verdict: RuleVerdict) => void;
}) {
  const { planScreen, rules } = useWords();
  const broken = plan.rules.filter(({ kept }) => !kept);
  if (broken.length === 0) return <p className="plan-kept">{planScreen.allKept}</p>;
  const isNearest = broken.every(({ couldHaveBeenKept }) => couldHaveBeenKept === false);
  return (
    <section className="plan-broken" aria-labelledby="plan-broken-title">
      <h2 id="plan-broken-title">{planScreen.notKept(broken.length)}</h2>
      <ul>
        {broken.map((verdict) => (
          <li key={verdict.rule} data-rule={verdict.rule}>
            <p>
              <b>{rules.title(verdict.rule)}.</b> {rules.sentence(verdict)}
            </p>
            {mendEdits(verdict, plan, locked, 0) !== null && (
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
      {isNearest && <p className="soft">{planScreen.nearest}</p>}
    </section>
  );
}
