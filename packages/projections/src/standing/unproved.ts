import { type Skill, TEMPTATIONS } from '@sedgeline/engine/ability';
import { castSide } from '@sedgeline/engine/session';
import type { StatedLeg } from '../timeline/record-walk.ts';
import type { SkillStanding } from '../views/views.ts';

type Unproved = SkillStanding['unproved'][number];

/** Skills in which the way out is a distance that can be proved. */
const HAS_DISTANCE: ReadonlySet<Skill> = new Set([
  'line',
  'stop',
  'hunt',
  'mark',
  'recall',
  'delivery',
  'cast-left',
  'cast-right',
  'cast-back',
]);

/**
 * What has never gone well at a skill, as codes: on ground new to the dog, beyond a distance (with the farthest that
 * did), with a dummy out, with one thrown, in cover to the knee, unseen. From the legs themselves, not from the model.
 */
export function unproved(skill: Skill, legs: readonly StatedLeg[]): readonly Unproved[] {
  const good = legs.filter(({ result }) => result.grade === 'good').map(({ result }) => result);
  const never = (code: string, proved: boolean): Unproved[] => (proved ? [] : [{ code }]);
  const farM = good.reduce((so, { ask }) => Math.max(so, ask.distanceM ?? 0), 0);
  const temptedTo = good.reduce(
    (so, { ask }) => Math.max(so, TEMPTATIONS.indexOf(ask.temptation ?? 'none')),
    0,
  );
  const seesItsWay = skill === 'line' || castSide(skill) !== null;
  return [
    ...never(
      'new-ground',
      good.some(({ context }) => context.earlierSessionsOnGround === 0),
    ),
    ...(HAS_DISTANCE.has(skill) ? [{ code: 'far', value: farM }] : []),
    ...never(
      'dummy-out',
      good.some(({ ask }) => (ask.otherDummies ?? 0) > 0),
    ),
    ...never('thrown', temptedTo >= TEMPTATIONS.indexOf('thrown-dummy')),
    ...never(
      'cover',
      good.some(({ ask }) => (ask.cover ?? 0) >= 2),
    ),
    ...(seesItsWay
      ? never(
          'blind',
          good.some(({ ask }) => ask.blind === true),
        )
      : []),
  ];
}
