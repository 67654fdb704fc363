import { spanOfTime } from '../figures.ts';
import type { Tongue } from '../tongue.ts';

/** Words of what stands round the reps of a session: opening it, the break, the end. */
export function sessionWords(t: Tongue) {
  const minutes = (n: number): string => t.count(n, 'minute', 'minutes');
  return {
    break: {
      title: 'Break',
      say: 'Water, shade, a game. No work.',
      left: (leftS: number): string => spanOfTime(Math.ceil(leftS)),
      leftInWords: (leftS: number): string =>
        leftS <= 0 ? 'The break is over.' : `${minutes(Math.ceil(leftS / 60))} left`,
      over: 'Ready when you are',
      backToWork: 'Back to work',
      due: 'Time for a break',
      take: (n: number): string => `Break, ${minutes(n)}`,
      goOn: 'Go on without',
      now: 'Break now',
    },
    end: {
      suggest: 'Enough for today',
      close: 'End the session',
      oneMore: 'One more',
      title: (dog: string): string => `${dog}: done for today`,
      reps: (n: number): string => t.count(n, 'rep', 'reps'),
      minutes: (n: number): string => minutes(Math.max(1, Math.round(n))),
      none: 'No rep was recorded.',
      column: { skill: 'Skill', good: 'Good', fair: 'Fair', missed: 'Missed' },
      notDogs: (n: number): string => `${t.count(n, 'leg', 'legs')} not held against the dog.`,
      breaks: (n: number): string => t.count(n, 'break', 'breaks'),
      nextTime: 'Next time',
      toDog: (dog: string): string => `What ${dog} can do`,
      toDogs: 'All dogs',
      again: 'Another session',
    },
    open: {
      title: (dog: string): string => `A session with ${dog}`,
      ground: 'Where?',
      noGround: 'Not said',
      newGround: 'A new ground',
      groundName: 'Name of the new ground',
      focus: 'What to work on?',
      anything: 'Whatever is due',
      go: 'Go',
      carryOn: (dog: string): string => `Carry on with ${dog}`,
      none: 'No session is open. Choose a dog to work.',
      unknown: 'This dog is not in the record.',
      toDogs: 'To the dogs',
      empty: 'First a dog: a name is enough.',
    },
  };
}

export type SessionWords = ReturnType<typeof sessionWords>;
