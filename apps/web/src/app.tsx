import { Redirect, Route, Switch } from 'wouter';
import { NotHere } from './parts/not-here.tsx';
import { useWords, WordsProvider } from './parts/words-context.tsx';
import { BackPlace, SessionBackPlace } from './places/back-place.tsx';
import { DogPlace } from './places/dog-place.tsx';
import { DogsPlace } from './places/dogs-place.tsx';
import { FilmPlace } from './places/film-place.tsx';
import { Framed } from './places/framed.tsx';
import { GroundPlace, GroundsPlace, LayoutPlace } from './places/ground-place.tsx';

import { ListenPlace } from './places/listen-place.tsx';
import { PlanChoicePlace, PlanPlace } from './places/plan-place.tsx';
import { SeasonPlace } from './places/season-place.tsx';
import { SetupPlace } from './places/setup-place.tsx';
import { OpenPlace, OpenTurnsPlace, WorkChoicePlace, WorkPlace } from './places/work-place.tsx';
import { NO_GROUND } from './screens/ground/ground-address.ts';
import './screens/work/all.css';
import { useChosenWords } from './state/chosen-words.ts';

/** Every screen and where it is found. */
export function App() {
  return (
    <WordsProvider value={useChosenWords()}>
      <Switch>
        <Route path="/">{() => <DogsPlace />}</Route>
        <Route path="/dog/:dog">{({ dog }) => <DogPlace dog={decodeURIComponent(dog)} />}</Route>
        <Route path="/plan">{() => <PlanChoicePlace />}</Route>
        <Route path="/plan/:dog">{({ dog }) => <PlanPlace dog={decodeURIComponent(dog)} />}</Route>
        <Route path="/season/:dog">{({ dog }) => <SeasonPlace dog={decodeURIComponent(dog)} />}</Route>
        <Route path="/work">{() => <WorkChoicePlace />}</Route>
        <Route path="/work/with/:dog">{({ dog }) => <OpenPlace dog={decodeURIComponent(dog)} />}</Route>
        <Route path="/work/turns">{() => <OpenTurnsPlace />}</Route>
        <Route path="/work/:session">
          {({ session }) => <WorkPlace session={decodeURIComponent(session)} />}
        </Route>
        <Route path="/back">{() => <BackPlace />}</Route>
        <Route path="/back/:session">
          {({ session }) => <SessionBackPlace session={decodeURIComponent(session)} />}
        </Route>
        <Route path="/back/:session/listen">
          {({ session }) => <ListenPlace session={decodeURIComponent(session)} />}
        </Route>
        <Route path="/film/:session">
          {({ session }) => <FilmPlace session={decodeURIComponent(session)} />}
        </Route>
        <Route path="/grounds">{() => <GroundsPlace />}</Route>
        <Route path="/grounds/:ground">{({ ground }) => <GroundPlace ground={groundOf(ground)} />}</Route>
        <Route path="/grounds/:ground/new/:start">
          {({ ground, start }) => (
            <LayoutPlace ground={groundOf(ground)} from={{ start: decodeURIComponent(start) }} />
          )}
        </Route>
        <Route path="/grounds/:ground/:layout">
          {({ ground, layout }) => (
            <LayoutPlace ground={groundOf(ground)} from={{ layout: decodeURIComponent(layout) }} />
          )}
        </Route>
        <Route path="/setup">{() => <SetupPlace />}</Route>
        <Route path="/index.html">{() => <Redirect to="/" replace />}</Route>
        <Route>{() => <Nowhere />}</Route>
      </Switch>
    </WordsProvider>
  );
}

/** The ground of an address; `null` where it is of none. */
const groundOf = (part: string): string | null => (part === NO_GROUND ? null : decodeURIComponent(part));

function Nowhere() {
  const { shell } = useWords();
  return (
    <Framed here="dogs">
      <NotHere title={shell.notFound} to="/" onward={shell.toDogs} />
    </Framed>
  );
}
