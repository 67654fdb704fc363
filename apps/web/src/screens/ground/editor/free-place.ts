import { alongM, distanceBetweenM, type Layout, type PlanePoint } from '@sedgeline/engine/ground';

/** Nothing new is put down nearer than this to what is there. */
const CLEAR_M = 4;
const OUT_M = [20, 28, 12, 36, 44] as const;
const ASIDE_DEG = [0, 30, -30, 60, -60, 90, -90, 15, -15, 45, -45, 75, -75] as const;

/** A place for something new: out from where the dog is sent, in the way that is up on the drawing, clear of what is there. */
export function freePlace(layout: Layout, upDeg: number): PlanePoint {
  const from = layout.sendFrom ?? layout.handlerAt;
  const there = [layout.handlerAt, from, ...layout.things];
  for (const outM of OUT_M) {
    for (const asideDeg of ASIDE_DEG) {
      const place = alongM(from, ((upDeg + asideDeg) * Math.PI) / 180, outM);
      if (there.every((other) => distanceBetweenM(place, other) >= CLEAR_M)) return place;
    }
  }
  // Sixty-five places taken: past the last of them.
  return alongM(from, (upDeg * Math.PI) / 180, 60 + CLEAR_M * layout.things.length);
}
