import type { Tongue } from '../tongue.ts';
import { toldWords } from './told.ts';

/** Words of one dog's standing: what it can do, where, how sure we are. */
export function dogWords(t: Tongue) {
  const unproved: Readonly<Record<string, (value: number | undefined) => string>> = {
    'new-ground': () => 'on new ground',
    'dummy-out': () => `with another ${t.dummy} out`,
    thrown: () => `to a thrown ${t.dummy}`,
    shot: () => 'with a shot',
    game: () => 'with game about',
    far: (v) => (v === undefined ? 'at a distance' : `beyond ${t.length(v)}`),
    late: () => 'late on the line',
    cover: () => 'in knee-high cover',
    blind: () => 'to a blind',
    obstacle: () => 'over a ditch, fence or water',
    distraction: () => 'with others working near',
    apart: () => 'with you standing apart',
    wait: (v) => (v === undefined ? 'after a long wait' : `after a wait of ${t.number(v)} s`),
    crew: () => 'worked in turn with other dogs',
    wind: () => 'in a cross-wind',
  };
  const names = { easy: 'Easy', usual: 'Usual', far: 'Far' } as const;
  return {
    title: (name: string): string => `What ${name} can do`,
    legs: (n: number): string => t.count(n, 'leg', 'legs'),
    ask: (name: keyof typeof names): string => names[name],
    askExplained: {
      easy: 'Easy: near, with little to draw the dog.',
      usual: 'Usual: an ordinary field on an ordinary day.',
      far: 'Far: a dog that is nearly made.',
      bars: 'Each bar is the chance of good; the thick stroke is what it may be.',
    },
    table: {
      skill: 'Skill',
      ask: 'Ask',
      chance: 'Chance of good, in 100',
      recent: 'Recent legs',
      worked: 'Worked',
      never: 'Never proved',
      none: 'Not asked yet',
    },
    notKnown: (legs: number): string =>
      legs === 0
        ? 'Not known yet: never worked.'
        : `Not known yet: ${t.count(legs, 'leg', 'legs')}, ten are needed.`,
    neverProved: (items: readonly string[]): string =>
      items.length === 0 ? 'Proved everywhere it was tried.' : `Never proved ${t.list(items)}.`,
    /** One thing never proved; a code that is not known here is read out as it stands. */
    unproved: (code: string, value?: number): string =>
      unproved[code]?.(value) ?? `with ${code.replaceAll('-', ' ')}`,
    countingEverything: (chances: readonly { readonly name: string; readonly inHundred: string }[]): string =>
      `Counting everything, your mistakes and the set-up's too: ${t.list(
        chances.map((c) => `${c.name.toLowerCase()} ${c.inHundred} in 100`),
      )}. Was every one of those really not the dog?`,
    recent: 'Recent legs, oldest first',
    recentSaid: (good: number, fair: number, missed: number): string =>
      t.list([`${good} good`, `${fair} fair`, `${missed} missed`]),
    notCounted: 'not held against the dog',
    worked: (ago: string): string => `Worked ${ago}`,
    honesty: {
      title: 'How often we were right',
      few: 'Too few legs yet to say how often the chances were right.',
      better: (ours: string, plain: string): string =>
        `How far off at a leg, 0 for never: ${ours}. Saying the dog’s average every time would have been ${plain} off.`,
      fitted: (dogs: number, legs: number, since: string): string =>
        `Since ${since}, how much dogs and days differ is taken from this kennel's own record: ${t.count(dogs, 'dog', 'dogs')}, ${t.count(legs, 'leg', 'legs')}.`,
      corrected: (slope: number, legs: number, since: string): string =>
        `The chances were ${slope < 1 ? 'too sure' : 'not sure enough'} over ${t.count(legs, 'leg', 'legs')}: since ${since} they are ${
          slope < 1 ? 'drawn in towards 50 in 100' : 'drawn out from 50 in 100'
        } (${t.number(slope, 2)} times in log-odds).`,
      columns: { stated: 'We said, in 100', happened: 'It was', legs: 'Legs', verdict: 'So' },
    },
    rest: {
      title: 'Rest',
      put: (name: string): string => `Put ${name} on rest`,
      until: 'Back at work on (optional)',
      untilHint: 'Left empty: until you say so. No session is planned meanwhile; the vet’s word goes first.',
      isResting: (name: string, until: string | null): string =>
        until === null ? `${name} is on rest.` : `${name} is on rest until ${until}.`,
      back: 'Back at work',
    },
    told: toldWords(t),
    closer: 'Look closer, skill by skill',
    work: (name: string): string => `Work ${name}`,
    carryOn: 'Carry on with the open session',
    empty: (name: string): string =>
      `Nothing is known of ${name} yet. Ten legs of a skill are enough to begin.`,
    back: 'All dogs',
    notFound: 'This dog is not in the record.',
    born: (age: string): string => age,
  };
}

export type DogWords = ReturnType<typeof dogWords>;
