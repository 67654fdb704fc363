import type { GoalForecastView, GoalRecord } from '@sedgeline/projections';
import { useCallback } from 'react';
import { Button } from '../../parts/button.tsx';
import { ChanceBar } from '../../parts/chance-bar/chance-bar.tsx';
import { LinkSummary } from '../../parts/link-summary.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { forecastOf } from '../../state/kennel.ts';
import { useAnswer } from '../dog/closer/use-answer.ts';
import { SeasonChart } from './season-chart.tsx';
import { SeasonTable } from './season-table.tsx';

export interface GoalCardProps {
  readonly goal: GoalRecord;
  /** Sessions a week, or `null` for the record's own pace. */
  readonly perWeek: number | null;
  readonly onChange: () => void;
  readonly onSetAside: () => void;
}

/** A goal: what it asks, how each ask stands, and the weeks to come. */
export function GoalCard({ goal, perWeek, onChange, onSetAside }: GoalCardProps) {
  const { seasonScreen } = useWords();
  // A goal that was set again is another object.
  const answer = useAnswer(useCallback(() => forecastOf(goal.goal, perWeek), [goal, perWeek]));
  return (
    <article className="goal-card" data-goal={goal.goal} aria-labelledby={`goal-${goal.goal}`}>
      <header>
        <h2 id={`goal-${goal.goal}`}>{goal.name}</h2>
        <p className="soft">{goal.by === null ? seasonScreen.noDate : seasonScreen.by(goal.by)}</p>
      </header>
      {answer === 'waiting' && <p className="season-waiting">{seasonScreen.waiting}</p>}
      {answer === 'failed' && <p role="alert">{seasonScreen.failed}</p>}
      {typeof answer === 'object' && answer.view !== null && <Told view={answer.view} />}
      <div className="goal-keys not-printed">
        <Button onClick={onChange}>{seasonScreen.change}</Button>
        {goal.asks.length > 0 && <Button onClick={onSetAside}>{seasonScreen.setAside}</Button>}
      </div>
    </article>
  );
}

function Told({ view }: { readonly view: GoalForecastView }) {
  const { season, seasonScreen } = useWords();
  const unknown = [
    ...new Set(
      view.asks.filter(({ known }) => !known).map(({ skill, legs }) => season.notKnown(skill, legs)),
    ),
  ];
  const { chart } = seasonScreen;
  return (
    <>
      {view.kind === 'cant-say' ? (
        <p className="season-said">{season.cantSay(view.why, view.dogName)}</p>
      ) : (
        <p className="season-said figures">{season.all(view).join(' ')}</p>
      )}
      {unknown.length > 0 && <p className="season-unknown">{unknown.join(' ')}</p>}
      <ul className="goal-asks">
        {view.asks.map(({ skill, ask, wanted, chance, interval90 }, at) => (
          <li key={`${skill} ${at}`}>
            <b>{seasonScreen.askName(skill, ask)}</b>
            <span className="soft figures">{seasonScreen.wantedNow(wanted, chance, interval90)}</span>
            <span className="goal-bar">
              <ChanceBar thin of={seasonScreen.askName(skill, ask)} chance={chance} interval90={interval90} />
              <i className="goal-wanted" style={{ left: `${wanted * 100}%` }} aria-hidden="true" />
            </span>
          </li>
        ))}
      </ul>
      {view.kind === 'forecast' && (
        <>
          <SeasonChart view={view} />
          <ul className="season-key soft">
            <li>{chart.ready}</li>
            <li>{chart.band}</li>
            {view.by !== null && <li>{chart.date}</li>}
          </ul>
          <details className="season-details">
            <LinkSummary>{chart.table}</LinkSummary>
            <SeasonTable weeks={view.forecast.weeks} />
            <p className="soft">{season.stated}</p>
          </details>
        </>
      )}
    </>
  );
}
