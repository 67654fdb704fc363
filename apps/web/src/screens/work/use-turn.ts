import { useEffect, useRef } from 'react';
import { useLocation } from 'wouter';
import { create } from 'zustand';
import { useSettings } from '../../state/settings.ts';
import type { After, WorkScreen } from '../../workers/kennel-calls.ts';
import { nextInTurn } from './turn-bar.tsx';

/** Time to see that the rep was taken before the next dog stands there, in milliseconds (our judgement, 2026). */
const SEEN_MS = 700;

/** The session from which the turn went on by itself, while nothing was tapped since: there Undo belongs. */
export const useCameFrom = create<{ readonly session: string | null }>()(() => ({ session: null }));

function isUnanswered(after: After | null): boolean {
  if (after === null) return false;
  return after.about === 'cause' ? after.cause === null : after.expectation === null;
}

/**
 * Among dogs worked in turn: goes on to the next dog when a rep was recorded to its end and nothing is asked about it. An undo, or
 * a tap on another dog meanwhile, keeps the turn where it is.
 */
export function useTurn(screen: WorkScreen | null): void {
  const byItself = useSettings((s) => s.turnByItself);
  const [, go] = useLocation();
  const session = screen?.view.session ?? null;
  const inTurn = screen?.view.inTurn ?? null;
  const reps = screen?.view.done.length ?? 0;
  const isAsking = screen !== null && (isUnanswered(screen.after) || screen.view.inHand !== null);
  const before = useRef<{ readonly session: string | null; readonly reps: number }>({ session, reps });
  useEffect(() => {
    const was = before.current;
    if (isAsking && was.session === session) return;
    before.current = { session, reps };
    if (!byItself || inTurn === null || session === null) return;
    if (was.session !== session || reps !== was.reps + 1) return;
    const next = nextInTurn(inTurn, session);
    if (next === null) return;
    const later = setTimeout(() => {
      useCameFrom.setState({ session });
      go(`/work/${next.session}`, { replace: true });
    }, SEEN_MS);
    return () => clearTimeout(later);
  }, [byItself, session, inTurn, reps, isAsking, go]);
}
