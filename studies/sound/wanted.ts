import type { Counts, Figures } from './score.ts';
import { figures } from './score.ts';
import type { Condition } from './sets.ts';

/** The least (or, where fewer is better, the most) that is asked of a detector, by condition: our aims, 2026. */
type Aims = Partial<Record<keyof Figures, number>>;

const TIMES: Aims = { onsetMedianS: 0.005, onsetP95S: 0.02, endMedianS: 0.012 };
const QUIET: Aims = { falseWhistlesPerHour: 20, falseClicksPerHour: 20 };

export const AIMS: Record<Condition, Aims> = {
  fair: { whistleF: 0.99, clickF: 0.97, ...TIMES },
  field: { whistleF: 0.97, whistleKindF: 0.97, clickF: 0.9, ...QUIET, ...TIMES },
  weak: {},
  nothing: QUIET,
  'coded-aac': { whistleF: 0.96 },
  'coded-opus': { whistleF: 0.96 },
};

const MORE_IS_BETTER: readonly (keyof Figures)[] = ['whistleF', 'whistleKindF', 'clickF'];

/** Names of the aims that the counts miss; a figure that cannot be said misses its aim. */
export function missedAims(condition: Condition, counts: Counts): (keyof Figures)[] {
  const found = figures(counts);
  return (Object.keys(AIMS[condition]) as (keyof Figures)[]).filter((name) => {
    const value = found[name];
    const aim = AIMS[condition][name]!;
    return value === null || (MORE_IS_BETTER.includes(name) ? value < aim : value > aim);
  });
}
