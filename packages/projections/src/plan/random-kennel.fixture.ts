import { type Ask, SKILLS, type Skill } from '@sedgeline/engine/ability';
import { type Random, seededRandom } from '@sedgeline/engine/numeric';
import type { PlanRequest } from '@sedgeline/engine/session';
import { TrainingDay, type WrittenLeg } from '../work/training-day.fixture.ts';

const DRAWS = ['none', 'post', 'placed-dummy', 'thrown-dummy'] as const;
const COLLARS = ['2019-05-01', '2025-03-01', '2025-11-10', null] as const;

/** Small seeds lie too near each other for a generator's first draws. */
const stirred = (seed: number): Random => {
  const random = seededRandom(Math.imul(seed + 1, 0x9e3779b1) >>> 0);
  for (let n = 0; n < 8; n++) random.uniform();
  return random;
};

const pick = <T>(random: Random, list: readonly T[]): T => list[random.below(list.length)] as T;

/** A chain as one might be written down; `reach` is how far the dog has come. */
function chain(random: Random, reach: number): readonly { readonly skill: Skill; readonly ask: Ask }[] {
  const lineM = Math.round(8 + reach * (0.5 + random.uniform()));
  const way = Math.round((0.2 + 0.6 * random.uniform()) * 100) / 100;
  const temptation = pick(random, DRAWS);
  const stopM = Math.round(lineM * way);
  const at = { distanceM: stopM, wayFraction: way };
  const home = [
    { skill: 'pickup' as const, ask: {} },
    { skill: 'delivery' as const, ask: { distanceM: lineM } },
  ];
  const cast = pick(random, ['cast-left', 'cast-right', 'cast-back'] as const);
  const castM = Math.round(5 + reach * 0.4);
  const line = { skill: 'line' as const, ask: { distanceM: lineM, temptation } };
  switch (random.below(8)) {
    case 0:
      return [{ skill: 'recall', ask: { distanceM: lineM } }];
    case 1:
      return [{ skill: 'steady', ask: { waitS: 5 * random.below(6), temptation } }];
    case 2:
      return [line, ...home];
    case 3:
      return [line, { skill: 'stop', ask: { ...at, temptation } }];
    case 4:
      return [
        line,
        { skill: 'stop', ask: { ...at, temptation } },
        { skill: cast, ask: { ...at, castM, temptation: 'placed-dummy', otherDummies: random.below(2) } },
        ...home,
      ];
    case 5:
      return [{ skill: cast, ask: { distanceM: stopM, castM, temptation: 'placed-dummy' } }, ...home];
    case 6:
      return [{ skill: 'mark', ask: { distanceM: lineM, temptation: 'thrown-dummy' } }, ...home];
    default:
      return [{ skill: 'heel', ask: { distraction: random.below(3) } }];
  }
}

/** An invented dog with up to ten sessions of any work, well or badly done. */
export function randomKennel(seed: number): TrainingDay {
  const random = stirred(seed);
  const born = pick(random, COLLARS);
  const day = new TrainingDay('2026-01-10T09:00:00Z').dog('dog', born === null ? {} : { born });
  const missedShare = 0.6 * random.uniform();
  let reach = 10;
  for (let session = random.below(11); session > 0; session--) {
    day.wait(60 * 24 * (1 + random.below(5)));
    day.open(`s${session}`, 'dog', random.uniform() < 0.5 ? { ground: 'home' } : {});
    for (let rep = 3 + random.below(8); rep > 0; rep--) {
      const legs: WrittenLeg[] = [];
      for (const leg of chain(random, reach)) {
        const grade = random.uniform() < missedShare ? 'missed' : random.uniform() < 0.3 ? 'fair' : 'good';
        legs.push({ ...leg, grade });
        if (grade === 'missed') break;
      }
      day.rep(legs, random.uniform() < 0.2 ? { expectation: 'hangs-back' } : {});
    }
    reach += 5;
  }
  return day;
}

/** Any request that a handler might make. */
export function randomRequest(seed: number): PlanRequest {
  const random = stirred(seed);
  const now = (share: number) => random.uniform() < share;
  return {
    dog: 'dog',
    minutes: pick(random, [1, 3, 5, 8, 10, 12, 15, 20, 25, 45]),
    ...(now(0.5) ? { ground: pick(random, ['home', 'elsewhere']) } : {}),
    ...(now(0.4) ? { skills: SKILLS.filter(() => now(0.25)) } : {}),
    ...(now(0.3) ? { kit: { posts: random.below(2), dummies: random.below(4) } } : {}),
    ...(now(0.3) ? { focus: { skill: pick(random, SKILLS) } } : {}),
    ...(now(0.25)
      ? { weather: { airC: 15 + 20 * random.uniform(), humidityPct: 40 + 50 * random.uniform() } }
      : {}),
  };
}
