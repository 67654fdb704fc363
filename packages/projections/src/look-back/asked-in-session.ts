import type { Skill } from '@sedgeline/engine/ability';
import type { LegRecord, RepRecord } from '../record/training-record.ts';
import type { AskedSkill } from '../views/look-back-view.ts';

/** The end of every retrieve: said only where nothing else was asked. */
const GOES_WITHOUT_SAYING: ReadonlySet<Skill> = new Set(['pickup', 'delivery']);

/** What the legs of a session asked, skill by skill: the one asked most often first, of two alike the one that came first. */
export function askedInSession(reps: readonly Pick<RepRecord, 'legs'>[]): readonly AskedSkill[] {
  const asked = new Map<Skill, AskedSkill>();
  for (const { skill, ask } of reps.flatMap(({ legs }) => legs)) {
    const before = asked.get(skill);
    asked.set(skill, {
      skill,
      times: (before?.times ?? 0) + 1,
      overM: widened(before?.overM ?? null, lengthM(skill, ask)),
    });
  }
  const all = [...asked.values()].toSorted((a, b) => b.times - a.times);
  const out = all.filter(({ skill }) => !GOES_WITHOUT_SAYING.has(skill));
  return out.length > 0 ? out : all;
}

function lengthM(skill: Skill, { castM, distanceM }: LegRecord['ask']): number | undefined {
  return skill.startsWith('cast-') ? castM : distanceM;
}

function widened(over: AskedSkill['overM'], overM: number | undefined): AskedSkill['overM'] {
  if (overM === undefined) return over;
  if (over === null) return { nearest: overM, farthest: overM };
  return { nearest: Math.min(over.nearest, overM), farthest: Math.max(over.farthest, overM) };
}
