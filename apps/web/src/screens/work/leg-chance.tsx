import type { PlannedLeg } from '@sedgeline/engine/session';
import { ChanceBar } from '../../parts/chance-bar/chance-bar.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** The chance that the leg in hand goes well, with its interval. */
export function LegChance({ leg }: { readonly leg: PlannedLeg }) {
  const { work } = useWords();
  return (
    <div className="work-chance">
      <ChanceBar of={work.chanceOf(leg.skill)} chance={leg.chance.good} interval90={leg.interval90.good} />
    </div>
  );
}
