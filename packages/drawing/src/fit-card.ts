import type { PlanePoint, RepPicture } from '@sedgeline/engine/ground';
import type { CardBox, Spot } from './drawing.ts';

/** Room kept free round what is drawn, in the drawing's units: for the marks' own size, the ruler and the labels. */
const ROOM = {
  labelled: { left: 24, right: 84, top: 34, foot: 42 },
  small: { left: 14, right: 14, top: 14, foot: 13 },
} as const;
/** A rep smaller than this is not blown up further: 8 m, the easy end and a bit (our judgement, 2026). */
const LEAST_SPAN_M = 8;

/** Metres to card and back: the same scale both ways, out is up. */
export interface CardScale {
  readonly unitsPerMetre: number;
  readonly send: Spot;
  toCard(point: PlanePoint): Spot;
}

/** Every point a picture draws, in metres. */
export function picturePoints(picture: RepPicture): PlanePoint[] {
  const strokes = picture.strokes.flatMap((stroke): PlanePoint[] => {
    if ('from' in stroke) return [stroke.from, stroke.to];
    if (stroke.kind !== 'hunt') return [stroke.at];
    const { at, radiusM } = stroke;
    return [
      { eastM: at.eastM - radiusM, northM: at.northM },
      { eastM: at.eastM + radiusM, northM: at.northM + radiusM },
    ];
  });
  const obstacles = picture.obstacles.flatMap(({ from, to }) => [from, to]);
  return [picture.sendFrom, picture.handlerAt, picture.dogAt, ...strokes, ...obstacles, ...picture.things];
}

/**
 * Finds the one scale at which all of a picture fits its card, the send point at the foot and in the middle where
 * the sides leave it there. Throws RangeError on a place that is not finite.
 */
export function fitCard(picture: RepPicture, box: CardBox): CardScale {
  const room = box.labels ? ROOM.labelled : ROOM.small;
  const points = picturePoints(picture);
  for (const { eastM, northM } of points) {
    if (!Number.isFinite(eastM) || !Number.isFinite(northM)) {
      throw new RangeError(`picture: expected finite places, got ${eastM}, ${northM}`);
    }
  }
  const east = points.map((p) => p.eastM);
  const north = points.map((p) => p.northM);
  const [west, rightmost] = [Math.min(...east), Math.max(...east)];
  const [south, out] = [Math.min(...north), Math.max(...north)];
  const spanEastM = Math.max(rightmost - west, 1e-6);
  const spanNorthM = Math.max(out - south, LEAST_SPAN_M);
  const innerWidth = Math.max(box.width - room.left - room.right, 1);
  const innerHeight = Math.max(box.height - room.top - room.foot, 1);
  const unitsPerMetre = Math.min(innerWidth / spanEastM, innerHeight / spanNorthM);

  const { sendFrom } = picture;
  const leastX = room.left + (sendFrom.eastM - west) * unitsPerMetre;
  const mostX = box.width - room.right - (rightmost - sendFrom.eastM) * unitsPerMetre;
  const send: Spot = {
    x: Math.min(Math.max(box.width / 2, leastX), Math.max(mostX, leastX)),
    y: box.height - room.foot - (sendFrom.northM - south) * unitsPerMetre,
  };
  return {
    unitsPerMetre,
    send,
    toCard: (point) => ({
      x: send.x + (point.eastM - sendFrom.eastM) * unitsPerMetre,
      y: send.y - (point.northM - sendFrom.northM) * unitsPerMetre,
    }),
  };
}
