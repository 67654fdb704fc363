import type { LayoutDrawn, Weather } from '@sedgeline/journal';
import { type Dice, rounded } from './dice.ts';
import type { DemoGround } from './kennel-cast.ts';

/** How far apart things stand, in metres: a small, a middling and a large drawing of each ground. */
const SIZES_M = [18, 40, 75] as const;

/** The size of drawing, 0 to 2, for the farthest that is asked. */
export const layoutSize = (farthestM: number): number => {
  const size = SIZES_M.findIndex((sizeM) => farthestM <= sizeM);
  return size < 0 ? SIZES_M.length - 1 : size;
};

export const layoutName = (ground: DemoGround, size: number): string => `${ground.added.ground}-${size + 1}`;

/**
 * A drawing of an invented layout: the handler at the origin, a post straight ahead with a dummy by it, a dummy to each
 * side where a cast would carry a dog, and what is dangerous on this ground.
 */
export function drawLayout(ground: DemoGround, size: number, weather: Weather, dice: Dice): LayoutDrawn {
  const sizeM = SIZES_M[size] ?? SIZES_M[0];
  const about = (metres: number) => rounded(metres + dice.between(-0.05, 0.05) * sizeM, 1);
  const stopM = 0.55 * sizeM;
  const hazards = {
    paddock: [],
    meadow: [{ thing: 'ditch', kind: 'hazard', eastM: 4, northM: rounded(1.25 * sizeM, 1), label: 'ditch' }],
    heath: [
      { thing: 'warren', kind: 'hazard', eastM: -30, northM: rounded(0.9 * sizeM, 1), label: 'rabbit holes' },
    ],
  } as const;
  const onGround = ground.added.ground as keyof typeof hazards;
  return {
    layout: layoutName(ground, size),
    name: `Stop and cast, ${sizeM} m`,
    ground: ground.added.ground,
    handlerAt: { eastM: 0, northM: 0 },
    things: [
      { thing: 'post', kind: 'post', eastM: about(0), northM: sizeM, label: 'post' },
      { thing: 'ahead', kind: 'dummy', eastM: about(1.5), northM: rounded(sizeM + 1, 1), how: 'placed' },
      { thing: 'left', kind: 'dummy', eastM: about(-0.5 * sizeM), northM: about(stopM), how: 'placed' },
      {
        thing: 'right',
        kind: 'dummy',
        eastM: about(0.5 * sizeM),
        northM: about(stopM),
        how: size > 0 ? 'thrown' : 'placed',
      },
      ...hazards[onGround],
    ],
    windFromDeg: weather.windFromDeg,
    windMPerS: weather.windMPerS,
  };
}
