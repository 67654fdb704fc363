import { type CareerSpec, MECHANISMS } from './career.ts';
import type { Pattern, Planted } from './pattern.ts';
import { LADDER_CLIMBER, POLICIES, type Policy } from './trainer.ts';

/** Sizes of the kennels of each mechanism: dogs, sessions of each dog, least and most reps of a session. */
const SIZES: readonly (readonly [dogs: number, sessions: number, reps: readonly [number, number]])[] = [
  [1, 10, [6, 12]],
  [2, 20, [6, 14]],
  [1, 40, [8, 14]],
  [4, 30, [6, 12]],
  [6, 10, [6, 12]],
  [3, 60, [6, 12]],
  [1, 120, [6, 12]],
  [6, 40, [6, 12]],
];

/** Puppies with a handful of legs: one to six reps in one or two sessions. */
const PUPPIES = 24;

/**
 * The kennels that the engine is judged on, for each mechanism: 8 sizes under 4 trainers (long) or 3 small ones (short), and
 * puppies. The short form's seeds are none of the long form's.
 */
export function judgingKennels(form: 'long' | 'short', seed: number): CareerSpec[] {
  const sizes = form === 'long' ? SIZES : SIZES.slice(1, 4);
  const policies = form === 'long' ? POLICIES : POLICIES.slice(0, 2);
  const first = 100_000 * seed + (form === 'long' ? 0 : 50_000);
  return MECHANISMS.flatMap((mechanism, m) => {
    const grown = sizes.flatMap(([dogs, sessions, reps], s) =>
      policies.map((policy, p) => ({
        mechanism,
        policy,
        dogs,
        sessions,
        reps,
        grounds: 2 + ((s + p) % 4),
        seed: first + 1000 * m + 10 * s + p,
        planted: null,
      })),
    );
    const puppies = Array.from({ length: form === 'long' ? PUPPIES : PUPPIES / 2 }, (_, n) => ({
      mechanism,
      policy: POLICIES[n % POLICIES.length]!,
      dogs: 1,
      sessions: 1 + (n % 2),
      reps: [1 + (n % 3), 3 + (n % 4)] as const,
      grounds: 1 + (n % 3),
      seed: first + 1000 * m + 500 + n,
      planted: null,
    }));
    return [...grown, ...puppies];
  });
}

/** A wall is only met by who goes far, tiredness by who takes few breaks; in the matching career too. */
const TRAINS_SO_THAT_IT_SHOWS: Partial<Record<Pattern, Partial<Policy>>> = {
  'distance-wall': { farther: 0.6 },
  'tires-late': { breaks: 0.08 },
};

/** A career with one pattern planted, and the matching one without it: the same dog, days and trainer. */
export function plantedPair(
  pattern: Pattern,
  size: number,
  seed: number,
): { with: CareerSpec; without: CareerSpec } {
  const planted: Planted = {
    pattern,
    size,
    weakSide: seed % 2 === 0 ? 'left' : 'right',
    wallM: [22, 30, 40][seed % 3]!,
  };
  const without: CareerSpec = {
    mechanism: 'practice-curve',
    policy: { ...LADDER_CLIMBER, ...TRAINS_SO_THAT_IT_SHOWS[pattern] },
    dogs: 1,
    sessions: 60,
    reps: [8, 16],
    grounds: 6,
    seed: 9_000_000 + seed,
    planted: null,
  };
  return { with: { ...without, planted }, without };
}
