import type { TimeWords } from '../time.ts';
import type { Tongue } from '../tongue.ts';
import type { Grade } from '../vocabulary.ts';

/** Words of Look back: the sessions as a list, and one of them. */
export function backWords(t: Tongue, time: TimeWords) {
  const reps = (n: number): string => t.count(n, 'rep', 'reps');
  return {
    title: 'Look back',
    empty: 'No session yet. What is recorded in Work is found here.',
    toWork: 'To Work',
    earlier: (n: number): string => `${t.number(n)} more, earlier`,
    session: (dog: string, atMs: number): string => `${dog}, ${time.date(atMs)}`,
    reps,
    open: 'still open',
    /** How the legs went, in words: "14 legs good, 2 fair, 1 missed". */
    went: ({ good, fair, missed }: Readonly<Record<Grade, number>>): string => {
      const all = good + fair + missed;
      if (all === 0) return 'nothing recorded';
      if (good === all) return all === 1 ? 'its one leg good' : `all ${t.number(all)} legs good`;
      const parts = [
        good > 0 ? `${t.number(good)} good` : '',
        fair > 0 ? `${t.number(fair)} fair` : '',
        missed > 0 ? `${t.number(missed)} missed` : '',
      ].filter((part) => part !== '');
      return `of ${t.count(all, 'leg', 'legs')}: ${t.list(parts)}`;
    },
    notFound: 'This session is not in the record.',
    toAll: 'All sessions',
    goOn: 'Go on with it in Work',
    listen: 'Listen',
    listenHint: 'Whistles and clicks from a sound, a film or the microphone, joined to the reps.',
    film: 'Film',
    filmHint: 'The film beside the reps.',
    noReps: 'No rep stands in this session.',
  };
}

export type BackWords = ReturnType<typeof backWords>;
