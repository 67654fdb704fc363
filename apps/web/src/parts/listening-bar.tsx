import { Link } from 'wouter';
import { useLive } from '../state/live-state.ts';
import { Button } from './button.tsx';
import './listening-bar.css';
import { useWords } from './words-context.tsx';

/** A microphone that gave not one sound for so long may be covered, or off. */
const SILENT_AFTER_S = 5;

/** While the microphone listens, on every screen: a light that says so, what it has heard, and the one key that stops it. */
export function ListeningBar() {
  const { listenScreen } = useWords();
  const { live } = listenScreen;
  const running = useLive((s) => s.running);
  const stopped = useLive((s) => s.stopped);
  if (running === null) {
    if (stopped === null) return null;
    return (
      <div className="listening-bar" data-on="false">
        <Link className="button button-plain" href={`/back/${encodeURIComponent(stopped)}/listen`}>
          {live.toResult}
        </Link>
      </div>
    );
  }
  const { doneS, blasts, clicks, isSilent, state, keptBytes, stop } = running;
  const isCare = state !== 'on' || (isSilent && doneS > SILENT_AFTER_S);
  return (
    <section className="listening-bar" data-on="true" data-state={state} aria-label={live.light}>
      <span className="listening-light" aria-hidden="true" />
      <p className="figures listening-told">
        <span>
          <b>{live.light}</b> {listenScreen.at(doneS)}
        </span>{' '}
        <span>{live.heard(blasts, clicks)}</span>
        {keptBytes !== null && (
          <>
            {' '}
            <span>{live.kept(keptBytes)}</span>
          </>
        )}
      </p>
      <Button onClick={stop}>{live.stop}</Button>
      {isCare && (
        <p className="listening-care" role="alert">
          {state === 'on' ? live.silent : live.state(state)}
        </p>
      )}
    </section>
  );
}
