import type { GoalRecord, SeasonView } from '@sedgeline/projections';
import { useState } from 'react';
import { Link } from 'wouter';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { GoalCard } from './goal-card.tsx';
import { draftOf, type GoalDraft, NEW_GOAL } from './goal-draft.ts';
import { GoalForm } from './goal-form.tsx';
import './season-all.css';

export interface SeasonScreenProps {
  readonly view: SeasonView;
  readonly nowMs: number;
  readonly onSet: (goal: GoalDraft) => void;
}

const OWN = 'own';
const PACES = [OWN, '1', '2', '3', '5'] as const;

/** A dog's goals, each with the weeks to come, and the making of one. */
export function SeasonScreen({ view, nowMs, onSet }: SeasonScreenProps) {
  const { seasonScreen, planScreen } = useWords();
  const [draft, setDraft] = useState<GoalDraft | null>(null);
  const [pace, setPace] = useState<(typeof PACES)[number]>(OWN);
  const [aside, setAside] = useState<GoalRecord | null>(null);
  const { dog, dogName, goals } = view;
  const save = (goal: GoalDraft) => {
    setDraft(null);
    setAside(null);
    onSet(goal);
  };
  return (
    <section className="season" aria-labelledby="season-title">
      <header className="season-head">
        <Link className="dog-back not-printed" href={`/dog/${encodeURIComponent(dog)}`}>
          {seasonScreen.back(dogName)}
        </Link>
        <h1 id="season-title">{seasonScreen.title(dogName)}</h1>
        <Link className="button button-plain not-printed" href={`/plan/${encodeURIComponent(dog)}`}>
          {planScreen.choose}
        </Link>
      </header>
      {goals.length === 0 && draft === null && <p className="season-empty">{seasonScreen.empty(dogName)}</p>}
      {view.sessions === 0 && <Notice>{seasonScreen.fewSessions(dogName)}</Notice>}
      {aside !== null && (
        <Notice
          action={
            <Button
              onClick={() => {
                onSet(draftOf(aside));
                setAside(null);
              }}
            >
              {seasonScreen.takeBack}
            </Button>
          }
        >
          {seasonScreen.setAsideSaid}
        </Notice>
      )}
      {goals.length > 0 && (
        <Choice
          legend={seasonScreen.pace}
          options={PACES.map((value) => ({
            value,
            label: value === OWN ? seasonScreen.ownPace : seasonScreen.perWeek(Number(value)),
          }))}
          value={pace}
          onChoose={setPace}
        />
      )}
      <div className="goal-cards">
        {goals.map((goal) =>
          draft?.goal === goal.goal ? (
            <GoalForm
              key={goal.goal}
              season={view}
              draft={draft}
              nowMs={nowMs}
              onSave={save}
              onCancel={() => setDraft(null)}
            />
          ) : (
            <GoalCard
              key={goal.goal}
              goal={goal}
              perWeek={pace === OWN ? null : Number(pace)}
              onChange={() => setDraft(draftOf(goal))}
              onSetAside={() => {
                setAside(goal);
                onSet({ ...draftOf(goal), asks: [] });
              }}
            />
          ),
        )}
      </div>
      {draft !== null && draft.goal === null ? (
        <GoalForm season={view} draft={draft} nowMs={nowMs} onSave={save} onCancel={() => setDraft(null)} />
      ) : (
        <Button
          look={goals.length === 0 ? 'main' : 'plain'}
          className="season-new not-printed"
          onClick={() => setDraft(NEW_GOAL)}
        >
          {goals.length === 0 ? seasonScreen.newGoal : seasonScreen.anotherGoal}
        </Button>
      )}
    </section>
  );
}
