import {
  alongM,
  distanceBetweenM,
  type Layout,
  type PlanePoint,
  type RepPicture,
  type RepStroke,
  SEND,
} from '../../ground/index.ts';
import { blowWhenDogAtM, type StopConditions, usualStopConditions } from '../../whistle/index.ts';
import { chainShape } from './chain-shape.ts';
import type { LaidLeg } from './laid-leg.ts';
import { goalOfThing, isAsked, layOut } from './lay-out.ts';
import { obstaclesOf } from './obstacles.ts';

/** What a picture needs beside the legs: wind to draw, and the dog's stop for the whistle point. */
export interface PictureConditions {
  readonly windFromDeg?: number | undefined;
  readonly windMPerS?: number | undefined;
  readonly stop?: StopConditions | undefined;
}

/**
 * The picture of a rep: its own layout (`layOut`), and the dog's way over it as strokes in metres. Seen from
 * above, send point at the origin, out is north. Everything that is drawn of a rep anywhere is drawn from this.
 */
export function drawnRep(legs: readonly LaidLeg[], conditions: PictureConditions = {}): RepPicture {
  const shape = chainShape(legs);
  const laid = layOut(legs);
  const wind = {
    ...(conditions.windFromDeg === undefined ? {} : { windFromDeg: conditions.windFromDeg }),
    ...(conditions.windMPerS === undefined ? {} : { windMPerS: conditions.windMPerS }),
  };
  const layout: Layout = { ...laid, ...wind };
  const strokes = strokesOf(legs, conditions.stop ?? usualStopConditions);
  const things = layout.things.map((thing) => ({
    ...thing,
    role: isAsked(thing) ? ('asked' as const) : ('other' as const),
    goal: goalOfThing(thing, shape),
  }));
  const obstacles = obstaclesOf(legs, strokes, shape.outM);
  const sendFrom = layout.sendFrom ?? layout.handlerAt;
  return {
    layout,
    sendFrom,
    handlerAt: layout.handlerAt,
    dogAt: sendFrom,
    strokes,
    things,
    cover: shape.cover,
    obstacles,
    reachM: reach([...things, ...strokes.flatMap(ends), ...obstacles.map(({ to }) => to), layout.handlerAt]),
  };
}

function strokesOf(legs: readonly LaidLeg[], conditions: StopConditions): RepStroke[] {
  const shape = chainShape(legs);
  const strokes: RepStroke[] = [];
  if (shape.sit) strokes.push({ kind: 'sit', at: alongM(SEND, 0, shape.outM) });
  const runsM = shape.stopM ?? (shape.send ? shape.outM : null);
  if (runsM !== null) strokes.push({ kind: 'line', from: SEND, to: alongM(SEND, 0, runsM), lengthM: runsM });
  if (shape.stopM !== null) {
    const at = alongM(SEND, 0, shape.stopM);
    if (shape.outM > shape.stopM + 0.5 && (shape.castSide === null || shape.passed)) {
      strokes.push({ kind: 'unrun', from: at, to: alongM(SEND, 0, shape.outM) });
    }
    strokes.push({ kind: 'stop', at, distanceM: shape.stopM });
    const blowM = blowWhenDogAtM(shape.stopM, conditions);
    strokes.push({ kind: 'whistle', at: alongM(SEND, 0, blowM), distanceM: blowM });
  }
  if (shape.send === 'hunt') {
    strokes.push({ kind: 'hunt', at: alongM(SEND, 0, shape.outM), radiusM: Math.max(3, shape.outM * 0.15) });
  }
  if (shape.castSide && shape.castFrom && shape.castTo) {
    strokes.push({
      kind: 'cast',
      side: shape.castSide,
      from: shape.castFrom,
      to: shape.castTo,
      lengthM: distanceBetweenM(shape.castFrom, shape.castTo),
    });
  }
  if (shape.comesHome) {
    const from = alongM(SEND, 0, shape.outM);
    strokes.push({ kind: 'recall', from, to: SEND, lengthM: shape.outM });
  }
  return strokes;
}

function ends(stroke: RepStroke): PlanePoint[] {
  return 'from' in stroke ? [stroke.from, stroke.to] : [stroke.at];
}

/** The ruler's end: the farthest mark out, rounded up to a whole 5 m (10 m beyond 40 m), 10 m at least. */
function reach(points: readonly PlanePoint[]): number {
  const farM = points.reduce((so, point) => Math.max(so, point.northM), 0);
  const step = farM > 40 ? 10 : 5;
  return Math.max(10, Math.ceil((farM - 1e-9) / step) * step);
}
