import { Link, Redirect } from 'wouter';
import { useWords } from '../parts/words-context.tsx';
import { OpenSessionScreen } from '../screens/work/open-session-screen.tsx';
import { OpenTurnsScreen } from '../screens/work/open-turns-screen.tsx';
import { SessionSummary } from '../screens/work/session-summary.tsx';
import { WorkScreen } from '../screens/work/work-screen.tsx';
import { useKennel } from '../state/kennel-store.ts';
import { Framed } from './framed.tsx';
import { KeepingNews } from './keeping-news.tsx';
import { Opening } from './opening.tsx';
import { useTitle } from './use-title.ts';

/** A session: bare while it is open, so that the whole screen is the field card and the pad; framed once it is closed. */
export function WorkPlace({ session }: { readonly session: string }) {
  const { work } = useWords();
  const closed = useKennel((s) => {
    const screen = s.work?.session === session ? s.work.screen : null;
    return screen !== null && screen.view.closedAtMs !== null ? screen : null;
  });
  const isNowhere = useKennel((s) => s.isReady && s.work?.session === session && s.work.screen === null);
  if (isNowhere) return <Redirect to="/work" replace />;
  if (closed === null) return <WorkScreen session={session} news={<KeepingNews />} />;
  return (
    <Framed here="work">
      <SessionSummary screen={closed} said={work.said.closed} />
    </Framed>
  );
}

/** Before a session with one dog. */
export function OpenPlace({ dog }: { readonly dog: string }) {
  const { shell } = useWords();
  useTitle(shell.places.work);
  return (
    <Framed here="work">
      <OpenSessionScreen dog={dog} />
    </Framed>
  );
}

/** Before several dogs are worked in turn. */
export function OpenTurnsPlace() {
  const { shell } = useWords();
  useTitle(shell.places.work);
  return (
    <Framed here="work">
      <OpenTurnsScreen />
    </Framed>
  );
}

/** Work with nothing said: the session that is open, or the dogs to choose from. */
export function WorkChoicePlace() {
  const { work, shell, dogs: words } = useWords();
  const dogs = useKennel((s) => s.dogs);
  useTitle(shell.places.work);
  if (dogs === null)
    return (
      <Framed here="work">
        <Opening />
      </Framed>
    );
  const open = dogs.dogs.filter((row) => row.openSession !== null);
  const [only] = open;
  if (open.length === 1 && only) return <Redirect to={`/work/${only.openSession}`} replace />;
  return (
    <Framed here="work">
      <section className="work-open">
        <h1>{shell.places.work}</h1>
        <p>{dogs.dogs.length === 0 ? work.open.empty : work.open.none}</p>
        <nav className="work-panel-keys" aria-label={words.title}>
          {dogs.dogs.map((row) => (
            <Link key={row.dog} href={row.openSession ? `/work/${row.openSession}` : `/work/with/${row.dog}`}>
              {row.openSession ? work.open.carryOn(row.name) : words.row.work(row.name)}
            </Link>
          ))}
          {dogs.dogs.length > 1 && <Link href="/work/turns">{work.inTurn.title}</Link>}
          {dogs.dogs.length === 0 && <Link href="/">{work.open.toDogs}</Link>}
        </nav>
      </section>
    </Framed>
  );
}
