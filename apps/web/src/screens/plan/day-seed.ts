import { sessionSeed } from '../../workers/session-seed.ts';

const DAY_MS = 86_400_000;

/** The seed of a dog's first plan of a day: the same all day, so that nothing changes by looking; another tomorrow. */
export function daySeed(dog: string, nowMs: number): number {
  return sessionSeed(`${dog} ${Math.floor(nowMs / DAY_MS)}`);
}
