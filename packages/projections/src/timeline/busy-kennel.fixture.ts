import { logistic, seededRandom } from '@sedgeline/engine/numeric';
import type { Fact } from '@sedgeline/journal';

const MINUTE_MS = 60_000;
const DAY_MS = 86_400_000;
const START_MS = Date.parse('2026-01-05T09:00:00Z');
const SKILLS = ['stop', 'line', 'recall'] as const;

/**
 * Facts of an invented kennel: dogs that are worked one after the other every other day, ten legs a session. Days differ by
 * `daySd`, more than the shipped priors expect, so that fitting finds something.
 */
export function busyKennel(seed: number, dogs: number, sessions: number, daySd = 0.9): readonly Fact[] {
  const random = seededRandom(seed);
  const facts: Fact[] = [];
  const at = (ms: number) => new Date(ms).toISOString();
  const add = (kind: string, ms: number, body: Fact['body']) =>
    facts.push({ id: `f-${facts.length}`, kind, at: at(ms), body });
  const able = Array.from({ length: dogs }, (_, d) => {
    add('dog-added', START_MS - DAY_MS + d, { dog: `dog-${d}`, name: `Dog ${d}` });
    return random.normal();
  });
  for (let s = 0; s < sessions; s++) {
    for (let d = 0; d < dogs; d++) {
      const openedMs = START_MS + 2 * s * DAY_MS + d * 60 * MINUTE_MS;
      const session = `s-${s}-${d}`;
      const form = daySd * random.normal();
      add('session-opened', openedMs, { session, dog: `dog-${d}` });
      for (let r = 0; r < 10; r++) {
        const distanceM = 5 * 2 ** Math.floor(5 * random.uniform());
        const eta = 1.5 + able[d]! + form - 0.6 * Math.log2(distanceM / 5);
        const u = random.uniform();
        const grade = u < logistic(eta - 1) ? 'good' : u < logistic(eta) ? 'fair' : 'missed';
        const skill = SKILLS[Math.floor(3 * random.uniform())]!;
        const excused = grade === 'missed' && random.uniform() < 0.1 ? { cause: 'handler' } : {};
        const legs = [{ skill, ask: { distanceM }, grade, ...excused }];
        add('rep-recorded', openedMs + (r + 1) * MINUTE_MS, { rep: `${session}-${r}`, session, legs });
      }
    }
  }
  return facts;
}
