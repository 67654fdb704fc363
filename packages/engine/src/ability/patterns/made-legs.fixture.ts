import { type Random, seededRandom } from '../../numeric/index.ts';
import type { Ask, Grade, Skill } from '../ask.ts';
import type { LegContext } from '../leg.ts';
import type { PatternLeg } from './pattern.ts';

/** What a made-up dog does: chance of a leg not missed, by hand; three quarters of those are good. */
export interface MadeDog {
  readonly skills: readonly Skill[];
  readonly ask?: (random: Random) => Ask;
  readonly context?: (rep: number) => Partial<LegContext>;
  readonly notMissed: (leg: {
    readonly skill: Skill;
    readonly ask: Ask;
    readonly context: LegContext;
  }) => number;
}

const DAY_MS = 86_400_000;

/** Legs of a made-up dog: one a rep, `perSession` reps a session, a session every third day. */
export function madeLegs(count: number, seed: number, dog: MadeDog, perSession = 12): PatternLeg[] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, (_, n): PatternLeg => {
    const session = Math.floor(n / perSession);
    const rep = n % perSession;
    const skill = dog.skills[random.below(dog.skills.length)]!;
    const ask = dog.ask?.(random) ?? {};
    const context: LegContext = {
      earlierSessionsOnGround: null,
      repsSinceBreak: rep,
      daysSinceWorked: 3,
      stopsRunning: 0,
      ageMonths: null,
      ...dog.context?.(rep),
    };
    const u = random.uniform();
    const notMissed = dog.notMissed({ skill, ask, context });
    const grade: Grade = u > notMissed ? 'missed' : u < 0.75 * notMissed ? 'good' : 'fair';
    const atMs = 1_700_000_000_000 + session * 3 * DAY_MS + rep * 60_000;
    return {
      dog: 'd',
      skill,
      session: `s${session}`,
      atMs,
      ask,
      context,
      grade,
      weight: 1,
      cause: grade === 'good' ? null : 'dog',
    };
  });
}
