import type { Ask, Skill } from '@sedgeline/engine/ability';
import type { StandingAsk } from '../views/views.ts';

/**
 * Named asks at which a standing is stated, the same for every dog, so that dogs and weeks can be compared. Our judgement,
 * 2026, common practice, no source: easy is a lesson in the garden, usual a week-day field, far a dog that is nearly made.
 */
const REFERENCE: Readonly<Record<Skill, Readonly<Record<StandingAsk['name'], Ask>>>> = {
  steady: {
    easy: {},
    usual: { waitS: 10, temptation: 'placed-dummy', handlerPlace: 'beside' },
    far: { waitS: 30, temptation: 'thrown-dummy', handlerPlace: 'beside', distraction: 2 },
  },
  line: {
    easy: { distanceM: 10, handlerPlace: 'beside' },
    usual: { distanceM: 40, temptation: 'placed-dummy', handlerPlace: 'beside' },
    far: { distanceM: 100, temptation: 'placed-dummy', handlerPlace: 'beside', cover: 1, blind: true },
  },
  stop: {
    easy: { distanceM: 5, wayFraction: 0.1 },
    usual: { distanceM: 20, wayFraction: 0.5, temptation: 'placed-dummy', handlerPlace: 'beside' },
    far: { distanceM: 60, wayFraction: 0.75, temptation: 'thrown-dummy', handlerPlace: 'beside' },
  },
  'cast-left': sideCast(),
  'cast-right': sideCast(),
  'cast-back': {
    easy: { distanceM: 5, castM: 5 },
    usual: { distanceM: 20, castM: 20, temptation: 'placed-dummy' },
    far: { distanceM: 60, castM: 40, temptation: 'placed-dummy', blind: true, otherDummies: 1, gapDeg: 60 },
  },
  hunt: {
    easy: { distanceM: 10 },
    usual: { distanceM: 25, cover: 1 },
    far: { distanceM: 60, cover: 2, distraction: 1 },
  },
  mark: {
    easy: { distanceM: 10, temptation: 'thrown-dummy' },
    usual: { distanceM: 40, temptation: 'thrown-dummy', cover: 1 },
    far: { distanceM: 90, temptation: 'shot-and-dummy', cover: 2, waitS: 10 },
  },
  pickup: {
    easy: {},
    usual: { temptation: 'placed-dummy' },
    far: { temptation: 'thrown-dummy', otherDummies: 2 },
  },
  delivery: { easy: {}, usual: { distanceM: 30 }, far: { distanceM: 80, distraction: 2 } },
  recall: {
    easy: { distanceM: 5 },
    usual: { distanceM: 30, distraction: 1 },
    far: { distanceM: 80, distraction: 2, temptation: 'placed-dummy' },
  },
  heel: { easy: {}, usual: { distraction: 1 }, far: { distraction: 2, temptation: 'thrown-dummy' } },
  leave: {
    easy: {},
    usual: { temptation: 'placed-dummy', distraction: 1 },
    far: { temptation: 'shot-and-dummy', distraction: 2 },
  },
};

function sideCast() {
  return {
    easy: { distanceM: 5, castM: 5 },
    usual: { distanceM: 20, castM: 15, temptation: 'placed-dummy' },
    far: { distanceM: 50, castM: 35, temptation: 'placed-dummy', blind: true, otherDummies: 1, gapDeg: 60 },
  } as const;
}

const NAMES = ['easy', 'usual', 'far'] as const;

/** The skill's named asks, easiest first. */
export function referenceAsks(
  skill: Skill,
): readonly { readonly name: StandingAsk['name']; readonly ask: Ask }[] {
  return NAMES.map((name) => ({ name, ask: REFERENCE[skill][name] }));
}

/** The ask of an ordinary field on an ordinary day. */
export function usualAsk(skill: Skill): Ask {
  return REFERENCE[skill].usual;
}
