import type { Skill } from '@sedgeline/engine/ability';
import type { PatternsView, StandingView } from '@sedgeline/projections';
import { lazy, Suspense } from 'react';
import { Link } from 'wouter';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';
import type { ToldAnswer } from '../../state/tell-level.ts';
import { LookCloser } from './closer/look-closer.tsx';
import './dog.css';
import { Honesty } from './honesty.tsx';
import { Patterns } from './patterns.tsx';
import { RestPart } from './rest-part.tsx';
import { SkillCard } from './skill-card.tsx';
import { StandingTable } from './standing-table.tsx';

const ToldPart = lazy(() => import('./told/told-part.tsx').then(({ ToldPart: part }) => ({ default: part })));

/** A dog of fewer legs is new to the record: what it did before is asked unasked for, and comes first. */
const NEW_LEGS = 10;

export interface DogScreenProps {
  /** `null` where no fact names the dog. */
  readonly view: StandingView | null;
  /** `null` until they are found. */
  readonly patterns: PatternsView | null;
  readonly hasOpenSession: boolean;
  readonly nowMs: number;
  readonly onWork: (dog: string) => void;
  /** The dog rests until a date (empty: no end), or with `null` is back at work. */
  readonly onRest: (dog: string, until: string | null) => void;
  /** Something is told of a skill, or with `null` taken back. */
  readonly onTell: (dog: string, skill: Skill, answer: ToldAnswer | null) => void;
}

/** What a dog can do, where, and how sure we are. Cards on a phone, a table on a laptop: the same figures. */
export function DogScreen({ view, patterns, hasOpenSession, nowMs, onWork, onRest, onTell }: DogScreenProps) {
  const words = useWords();
  if (!view) {
    return (
      <section className="dog">
        <h1>{words.dog.notFound}</h1>
        <Link className="button button-plain" href="/">
          {words.dog.back}
        </Link>
      </section>
    );
  }
  const isNew = view.legs < NEW_LEGS;
  const told = (
    <Suspense fallback={null}>
      <ToldPart view={view} isNew={isNew} onTell={(skill, answer) => onTell(view.dog, skill, answer)} />
    </Suspense>
  );
  return (
    <section className="dog" aria-labelledby="dog-title">
      <div className="dog-head">
        <div>
          <Link className="dog-back not-printed" href="/">
            {words.dog.back}
          </Link>
          <h1 id="dog-title">{words.dog.title(view.name)}</h1>
          <p className="soft figures">{words.dog.legs(view.legs)}</p>
        </div>
        <div className="dog-head-keys not-printed">
          <Link className="button button-plain" href={`/season/${encodeURIComponent(view.dog)}`}>
            {words.seasonScreen.link}
          </Link>
          <Link className="button button-plain" href={`/plan/${encodeURIComponent(view.dog)}`}>
            {words.planScreen.choose}
          </Link>
          <Button look="main" onClick={() => onWork(view.dog)}>
            {hasOpenSession ? words.dog.carryOn : words.dog.work(view.name)}
          </Button>
        </div>
      </div>
      <RestPart
        name={view.name}
        rest={view.rest}
        onRest={(until) => onRest(view.dog, until)}
        onBack={() => onRest(view.dog, null)}
      />
      {isNew && told}
      {view.skills.length === 0 ? (
        <p className="dog-empty">{words.dog.empty(view.name)}</p>
      ) : (
        <>
          <ul className="dog-asks-explained soft">
            <li>{words.dog.askExplained.easy}</li>
            <li>{words.dog.askExplained.usual}</li>
            <li>{words.dog.askExplained.far}</li>
            <li>{words.dog.askExplained.bars}</li>
          </ul>
          <div className="dog-cards">
            {view.skills.map((skill) => (
              <SkillCard key={skill.skill} dog={view.dog} name={view.name} standing={skill} nowMs={nowMs} />
            ))}
          </div>
          <StandingTable name={view.name} skills={view.skills} nowMs={nowMs} />
          <section className="closer-skills not-printed" aria-labelledby="closer-title">
            <h2 id="closer-title">{words.dog.closer}</h2>
            <ul>
              {view.skills.map((skill) => (
                <li key={skill.skill}>
                  <h3>{words.trade.skillInWords(skill.skill)}</h3>
                  <LookCloser dog={view.dog} standing={skill} nowMs={nowMs} />
                </li>
              ))}
            </ul>
          </section>
          {patterns !== null && <Patterns view={patterns} />}
          <Honesty honesty={view.honesty} />
        </>
      )}
      {!isNew && told}
    </section>
  );
}
