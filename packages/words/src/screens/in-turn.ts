import type { Tongue } from '../tongue.ts';

/** Words of dogs worked in turn on one exercise. */
export function inTurnWords(t: Tongue) {
  return {
    title: 'Several dogs in turn',
    hint: 'One exercise, a session for each dog, and the turn goes round.',
    choose: 'Which dogs?',
    chosen: (n: number): string => (n === 0 ? 'None chosen yet.' : `${t.count(n, 'dog', 'dogs')} in turn.`),
    needTwo: 'Choose two dogs or more.',
    busy: (dog: string): string => `${dog} has a session open, which goes on alone.`,
    what: 'Which exercise?',
    go: 'Begin',
    name: 'Dogs in turn',
    next: (dog: string): string => `Next: ${dog}`,
    dog: (name: string, reps: number): string => `${name}, ${t.count(reps, 'rep', 'reps')}`,
    endAll: 'End the session of every dog',
  };
}

export type InTurnWords = ReturnType<typeof inTurnWords>;
