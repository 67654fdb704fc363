import { create } from 'zustand';

const useSaid = create<{ readonly text: string; readonly turn: number }>()(() => ({ text: '', turn: 0 }));

/** Says a sentence to whoever listens to the screen; the same sentence twice is said twice. */
export function announce(text: string): void {
  useSaid.setState(({ turn }) => ({ text, turn: turn + 1 }));
}

/** What was said last, for screen readers; seen by nobody. */
export function Announcer() {
  const { text, turn } = useSaid();
  return (
    <div className="work-said" role="status" aria-live="polite" aria-atomic="true" data-said={turn}>
      {text}
      {turn % 2 === 1 ? '\u00a0' : ''}
    </div>
  );
}
