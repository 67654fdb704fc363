import type { CleanSend, PatternLeg } from '../../packages/engine/src/ability/index.ts';
import type { Fact } from '../../packages/journal/src/index.ts';
import { AbilityTimeline, foldRecord } from '../../packages/projections/src/index.ts';
import { patternLegs } from '../../packages/projections/src/patterns/patterns-of-dog.ts';
import type { CareerSpec } from '../careers/career.ts';
import { plantedPair } from '../careers/kennels.ts';
import type { Pattern } from '../careers/pattern.ts';
import { playCareer } from '../careers/play-career.ts';
import { sidednessOf } from './sidedness.ts';

/** What a detector sees of a career: the dog's legs and clean sends, as the program reads them. */
export interface DogRecordSeen {
  readonly legs: readonly PatternLeg[];
  readonly sends: readonly CleanSend[];
}

/** Plays a career and reads its facts as the program does. */
export function recordOf(spec: CareerSpec): DogRecordSeen {
  const timeline = new AbilityTimeline();
  timeline.update(foldRecord(playCareer(spec).facts as readonly Fact[]));
  return { legs: patternLegs(timeline.stated, 'dog-0'), sends: timeline.walk('dog-0').cleanSends };
}

/** Sides count as planted from nine tenths of the size that matters to a fifth above it, as absent under a quarter of it. */
const PLANTED_SIDES = [0.9, 1.2] as const;
const EVEN_SIDES = 0.25;

/** Careers that have a pattern at the size that matters, and careers that have it not, `count` of each from a seed on. */
export function careersOf(
  pattern: Pattern,
  count: number,
  seed: number,
): { readonly having: readonly CareerSpec[]; readonly lacking: readonly CareerSpec[] } {
  const having: CareerSpec[] = [];
  const lacking: CareerSpec[] = [];
  for (let n = 0; having.length < count || lacking.length < count; n++) {
    const pair = plantedPair(pattern, 1, seed + n);
    const isSided = pattern === 'one-sided';
    const planted = isSided ? Math.abs(sidednessOf(pair.with)) : PLANTED_SIDES[0];
    const born = isSided ? Math.abs(sidednessOf(pair.without)) : 0;
    const has = planted >= PLANTED_SIDES[0] && planted <= PLANTED_SIDES[1];
    if (has && having.length < count) having.push(pair.with);
    if (born <= EVEN_SIDES && lacking.length < count) lacking.push(pair.without);
  }
  return { having, lacking };
}
