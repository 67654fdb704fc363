import type { RuleName, RuleVerdict } from '@sedgeline/engine/session';
import type { PlanStrip as PlanStripView } from '@sedgeline/projections';
import { useWords } from '../../parts/words-context.tsx';

const CELLS = ['minutes', 'sides', 'clean', 'stops', 'most'] as const;
type Cell = (typeof CELLS)[number];

/** Under which figure a rule that is not kept shows. */
const CELL_OF: Readonly<Record<RuleName, Cell>> = {
  'fits-the-time': 'minutes',
  break: 'minutes',
  safe: 'minutes',
  'even-sides': 'sides',
  'clean-runs-unpredictable': 'clean',
  'vary-where-the-stop-comes': 'stops',
  'known-first': 'most',
  'one-thing-at-a-time': 'most',
  'within-reach': 'most',
  'finish-well': 'most',
};

/** The plan in five figures; one that breaks a rule is framed, and says so. */
export function PlanStrip({
  strip,
  rules,
}: {
  readonly strip: PlanStripView;
  readonly rules: readonly RuleVerdict[];
}) {
  const { planScreen, rules: ruleWords } = useWords();
  return (
    <ul className="plan-strip figures" aria-label={planScreen.strip.title}>
      {CELLS.map((cell) => {
        const { figure, beside } = planScreen.strip[cell](strip);
        const broken = rules.filter(({ rule, kept }) => !kept && CELL_OF[rule] === cell);
        return (
          <li key={cell} data-cell={cell} data-broken={broken.length > 0 || undefined}>
            <b>{figure}</b>
            <span>
              {broken.length === 0 ? beside : broken.map(({ rule }) => ruleWords.title(rule)).join('; ')}
            </span>
          </li>
        );
      })}
    </ul>
  );
}
