import type { GoalForecastView } from '@sedgeline/projections';
import { useWords } from '../../parts/words-context.tsx';
import { placeSeason, weekTicks } from './place-season.ts';

const SCALE = [1, 0.75, 0.5, 0.25, 0] as const;

/** The weeks to come: how likely the goal is reached by each, and how all its asks would go on a day. The sentences say the same. */
export function SeasonChart({ view }: { readonly view: GoalForecastView & { readonly kind: 'forecast' } }) {
  const { seasonScreen } = useWords();
  const { chart } = seasonScreen;
  const { weeks, readyInWeeks } = view.forecast;
  const last = weeks.at(-1)?.week ?? 0;
  const { ready, line, band, xOf } = placeSeason(weeks);
  // Week 0 is now, and is said in words; the mark is for a week to come.
  const half = readyInWeeks.p50 === 0 ? undefined : weeks.find(({ week }) => week === readyInWeeks.p50);
  const percent = (share: number): string => `${Math.round(share * 10_000) / 100}%`;
  return (
    <figure className="season-chart" aria-hidden="true" data-weeks={weeks.length}>
      <div className="season-scale figures">
        {SCALE.map((chance) => (
          <span key={chance}>{chart.scale(chance)}</span>
        ))}
      </div>
      <div className="season-plot">
        <svg aria-hidden="true" viewBox="0 0 1 1" preserveAspectRatio="none">
          {SCALE.map((chance) => (
            <path key={chance} className="season-grid" d={`M0 ${1 - chance}H1`} />
          ))}
          <path className="season-band" d={band} />
          <path className="season-line" d={line} />
          {view.by !== null && <path className="season-date" d={`M${xOf(view.by.week)} 0V1`} />}
          <path className="season-ready" d={ready} />
        </svg>
        {half !== undefined && (
          <i
            className="season-half"
            style={{ left: percent(xOf(half.week)), top: percent(1 - half.probabilityReady) }}
          />
        )}
        {view.by !== null && (
          <span
            className="season-date-name"
            data-side={xOf(view.by.week) > 0.5 ? 'before' : 'after'}
            style={{ left: percent(xOf(view.by.week)) }}
          >
            {chart.dateMark(view.by.date)}
          </span>
        )}
      </div>
      <div className="season-weeks figures">
        {weekTicks(last).map((week) => (
          <span key={week} className="season-tick" style={{ left: percent(xOf(week)) }}>
            {chart.week(week)}
          </span>
        ))}
      </div>
      <p className="season-axis soft">{chart.weeks}</p>
    </figure>
  );
}
