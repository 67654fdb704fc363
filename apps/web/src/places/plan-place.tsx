import { lazy, Suspense } from 'react';
import { Link, Redirect, useLocation } from 'wouter';
import { NotHere } from '../parts/not-here.tsx';
import { useWords } from '../parts/words-context.tsx';
import type { PlanState } from '../screens/plan/use-plan.ts';
import { useKennel } from '../state/kennel-store.ts';
import { workPlan } from '../state/work-plan.ts';
import { Framed } from './framed.tsx';
import { Opening } from './opening.tsx';
import { useTitle } from './use-title.ts';

const PlanScreen = lazy(() =>
  import('../screens/plan/plan-screen.tsx').then(({ PlanScreen: screen }) => ({ default: screen })),
);

/** A plan for one dog, joined to the record. */
export function PlanPlace({ dog }: { readonly dog: string }) {
  const { planScreen, dog: dogWords, dogs: dogsWords } = useWords();
  const [, go] = useLocation();
  const record = useKennel((s) => s.record);
  const isReady = useKennel((s) => s.isReady);
  const dogs = useKennel((s) => s.dogs);
  const row = dogs?.dogs.find((one) => one.dog === dog);
  useTitle(row === undefined ? planScreen.plan : planScreen.title(row.name));
  const work = async (state: PlanState) => {
    const session = row?.openSession ?? (await workPlan(record, state));
    go(`/work/${session}`);
  };
  return (
    <Framed here="plan">
      {!isReady || dogs === null ? (
        <Opening />
      ) : row === undefined ? (
        <NotHere title={dogWords.notFound} to="/" onward={dogsWords.title} />
      ) : (
        <Suspense fallback={<Opening />}>
          <PlanScreen
            key={`${record} ${dog}`}
            record={record}
            dog={row}
            grounds={dogs.grounds}
            onWork={(state) => void work(state)}
          />
        </Suspense>
      )}
    </Framed>
  );
}

/** Plan with nothing said: the one dog there is, or the dogs to choose from. */
export function PlanChoicePlace() {
  const { planScreen, work } = useWords();
  const dogs = useKennel((s) => s.dogs);
  useTitle(planScreen.plan);
  const [only] = dogs?.dogs ?? [];
  if (dogs?.dogs.length === 1 && only !== undefined)
    return <Redirect to={`/plan/${encodeURIComponent(only.dog)}`} replace />;
  return (
    <Framed here="plan">
      {dogs === null ? (
        <Opening />
      ) : (
        <section className="work-open">
          <h1>{planScreen.choose}</h1>
          <p>{dogs.dogs.length === 0 ? planScreen.noDogs : planScreen.chooseDog}</p>
          <nav className="work-panel-keys" aria-label={planScreen.choose}>
            {dogs.dogs.map((row) => (
              <Link key={row.dog} href={`/plan/${encodeURIComponent(row.dog)}`}>
                {row.name}
              </Link>
            ))}
            {dogs.dogs.length === 0 && <Link href="/">{work.open.toDogs}</Link>}
          </nav>
        </section>
      )}
    </Framed>
  );
}
