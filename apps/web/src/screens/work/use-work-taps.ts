import type { Grade } from '@sedgeline/engine/ability';
import type { Cause, Expectation, Reward, Turn } from '@sedgeline/projections';
import { useMemo } from 'react';
import { useLocation } from 'wouter';
import { announce } from '../../parts/announcer.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { tapWork, watchSession } from '../../state/kennel.ts';
import { useKennel } from '../../state/kennel-store.ts';
import { pulse, readySound } from '../../state/signals.ts';
import type { Tap, TapAnswer } from '../../workers/kennel-calls.ts';
import { useCameFrom } from './use-turn.ts';

/** Length of a break, minutes, where nothing else is said (common practice, no source). */
export const BREAK_MINUTES = 3;

/** Everything a thumb can do on Work. Each is on disk before it is answered; what was recorded is announced. */
export interface WorkTaps {
  readonly grade: (grade: Grade) => void;
  readonly restGood: () => void;
  readonly ended: () => void;
  readonly undo: () => void;
  readonly cause: (cause: Cause) => void;
  readonly expectation: (expectation: Expectation) => void;
  readonly turn: (turn: Turn) => void;
  readonly blew: (when: 'earlier' | 'later') => void;
  readonly reward: (rep: string, reward: readonly Reward[]) => void;
  readonly gotIt: (rep: string, got: boolean) => void;
  readonly startBreak: (minutes?: number) => void;
  readonly breakOver: () => void;
  readonly close: () => void;
  readonly send: (tap: Tap, said?: string) => void;
}

export function useWorkTaps(): WorkTaps {
  const { work, ask } = useWords();
  const [, go] = useLocation();
  return useMemo(() => {
    /** What stands on the screen after a tap, said aloud: the next leg, or the next rep. */
    const nextSaid = (): string => {
      const screen = useKennel.getState().work?.screen;
      const inHand = screen?.view.inHand;
      if (inHand) {
        const next = inHand.chain[inHand.graded.length];
        return next === undefined ? '' : work.said.now(next.skill);
      }
      const rep = screen?.chosen?.rep ?? screen?.view.asked;
      return rep ? work.said.next(ask.rep(rep.legs)) : '';
    };
    const tell = (answer: TapAnswer, said: string | undefined, nothing: string): void => {
      if (answer.kind === 'stale') return;
      if (answer.kind === 'nothing-that-way') {
        announce(nothing);
        return;
      }
      pulse('recorded');
      const what =
        answer.kind === 'recorded' ? work.said.recorded(answer.repNumber, answer.legs) : (said ?? '');
      const saved = answer.saved ? '' : work.said.inMemory;
      announce([what, saved, nextSaid()].filter((part) => part !== '').join(' '));
    };
    const send = (tap: Tap, said?: string, nothing: string = work.nothingThatWay): void => {
      useCameFrom.setState({ session: null });
      void tapWork(tap).then((answer) => tell(answer, said, nothing));
    };
    /** The last tap back. Where the turn has gone on by itself since, that tap was made on the dog before. */
    const undo = async (): Promise<void> => {
      const { session } = useCameFrom.getState();
      if (session !== null) {
        await watchSession(session);
        go(`/work/${session}`, { replace: true });
      }
      send({ do: 'undo' }, work.said.undone, work.said.nothingToUndo);
    };
    return {
      grade: (grade) => send({ do: 'grade', grade }),
      restGood: () => send({ do: 'rest-good' }),
      ended: () => send({ do: 'ended' }, work.said.ended),
      undo: () => void undo(),
      cause: (cause) => send({ do: 'cause', cause }, work.said.cause(cause)),
      expectation: (expectation) =>
        send({ do: 'expectation', expectation }, work.said.expectation(expectation)),
      turn: (turn) =>
        send(
          { do: 'turn', turn },
          undefined,
          { easier: work.nothingEasier, harder: work.nothingHarder, clean: work.nothingThatWay }[turn],
        ),
      blew: (when) => send({ do: 'blew', when }, work.last.saidBlew(when)),
      reward: (rep, reward) => send({ do: 'reward', rep, reward }, work.last.saidReward(reward)),
      gotIt: (rep, got) => send({ do: 'got-it', rep, got }, work.last.saidGotIt(got)),
      startBreak: (minutes = BREAK_MINUTES) => {
        readySound();
        send({ do: 'break', minutes }, work.said.breakBegun(minutes));
      },
      breakOver: () => send({ do: 'break-over' }, work.said.breakOver),
      close: () => send({ do: 'close' }, work.said.closed),
      send,
    };
  }, [work, ask, go]);
}
