import { bearingDegOf, isLineTo, type Layout, type PlanePoint } from '@sedgeline/engine/ground';
import type { CardBox, Spot } from './drawing.ts';
import type { CardScale } from './fit-card.ts';

/** Which way is up on a drawing: north, or the way the dogs are sent. */
export type UpWish = 'north' | 'send';

/** How a ground lies on its drawing: metres to card and back, at one scale both ways. */
export interface GroundScale extends CardScale {
  /** The bearing that is up, degrees clockwise from north. */
  readonly upDeg: number;
  toGround(spot: Spot): PlanePoint;
}

/** Room round what is drawn, in the drawing's units: for the marks' own size, the ruler and the labels. */
const ROOM = { labelled: { x: 70, top: 40, foot: 52 }, small: { x: 16, top: 16, foot: 15 } } as const;
/** A layout smaller than this is not blown up further: a room to throw a dummy in (our judgement, 2026). */
const LEAST_SPAN_M = 16;

/**
 * Finds the scale at which a whole layout fits its card, the middle of what is drawn in the card's middle and the lowest
 * thing at its foot where the card is no taller than it; `wider` leaves so many times the room. Throws RangeError on a place that is not finite.
 */
export function fitGround(layout: Layout, box: CardBox, up: UpWish, wider = 1): GroundScale {
  const upDeg = up === 'north' ? 0 : wayOutDeg(layout);
  const points = [layout.handlerAt, layout.sendFrom ?? layout.handlerAt, ...layout.things];
  for (const { eastM, northM } of points) {
    if (!Number.isFinite(eastM) || !Number.isFinite(northM))
      throw new RangeError(`layout: expected finite places, got ${eastM}, ${northM}`);
  }
  const turned = points.map((point) => turn(point, upDeg));
  const rights = turned.map(({ rightM }) => rightM);
  const ups = turned.map(({ upM }) => upM);
  const [left, right] = [Math.min(...rights), Math.max(...rights)];
  const [lowest, highest] = [Math.min(...ups), Math.max(...ups)];
  const room = box.labels ? ROOM.labelled : ROOM.small;
  const spanUpM = Math.max(highest - lowest, LEAST_SPAN_M);
  const unitsPerMetre =
    Math.min(
      Math.max(box.width - 2 * room.x, 1) / Math.max(right - left, LEAST_SPAN_M),
      Math.max(box.height - room.top - room.foot, 1) / spanUpM,
    ) / wider;
  const foot = box.height - room.foot;
  const spare = foot - room.top - spanUpM * unitsPerMetre;
  return scaleAt({
    unitsPerMetre,
    upDeg,
    middle: { rightM: (left + right) / 2, upM: lowest },
    at: { x: box.width / 2, y: foot - spare / 2 },
    sendFrom: layout.sendFrom ?? layout.handlerAt,
  });
}

interface Placing {
  readonly unitsPerMetre: number;
  readonly upDeg: number;
  readonly middle: { readonly rightM: number; readonly upM: number };
  /** Where on the card `middle` comes. */
  readonly at: Spot;
  readonly sendFrom: PlanePoint;
}

function scaleAt({ unitsPerMetre, upDeg, middle, at, sendFrom }: Placing): GroundScale {
  const toCard = (point: PlanePoint): Spot => {
    const { rightM, upM } = turn(point, upDeg);
    return {
      x: at.x + (rightM - middle.rightM) * unitsPerMetre,
      y: at.y - (upM - middle.upM) * unitsPerMetre,
    };
  };
  return {
    unitsPerMetre,
    upDeg,
    send: toCard(sendFrom),
    toCard,
    toGround: ({ x, y }) => {
      const rightM = middle.rightM + (x - at.x) / unitsPerMetre;
      const upM = middle.upM + (at.y - y) / unitsPerMetre;
      return turnBack(rightM, upM, upDeg);
    },
  };
}

const RAD = Math.PI / 180;

function turn(
  { eastM, northM }: PlanePoint,
  upDeg: number,
): { readonly rightM: number; readonly upM: number } {
  const [sin, cos] = [Math.sin(upDeg * RAD), Math.cos(upDeg * RAD)];
  return { rightM: eastM * cos - northM * sin, upM: eastM * sin + northM * cos };
}

/** The place that lies so far to the right and up on a drawing with this bearing up. */
export function turnBack(rightM: number, upM: number, upDeg: number): PlanePoint {
  const [sin, cos] = [Math.sin(upDeg * RAD), Math.cos(upDeg * RAD)];
  return { eastM: rightM * cos + upM * sin, northM: upM * cos - rightM * sin };
}

/** The way the dogs are sent: the mean direction of the lines to posts and dummies; north where there is none. */
function wayOutDeg(layout: Layout): number {
  const from = layout.sendFrom ?? layout.handlerAt;
  let [east, north] = [0, 0];
  for (const thing of layout.things.filter(isLineTo)) {
    const [e, n] = [thing.eastM - from.eastM, thing.northM - from.northM];
    const length = Math.hypot(e, n);
    if (length < 1e-6) continue;
    east += e / length;
    north += n / length;
  }
  // Lines to all sides have no mean direction.
  if (Math.hypot(east, north) < 1e-3) return 0;
  return bearingDegOf({ eastM: 0, northM: 0 }, { eastM: east, northM: north });
}
