import type { RepPicture, RepStroke } from '@sedgeline/engine/ground';
import { boxesOfMark } from './boxes-of-mark.ts';
import type { CardWords } from './card-words.ts';
import { arrowHead, drawCast } from './draw-cast.ts';
import { drawCover } from './draw-cover.ts';
import { drawObstacle } from './draw-obstacle.ts';
import type { CardBox, Mark, RepDrawing, Spot } from './drawing.ts';
import { type CardScale, fitCard } from './fit-card.ts';
import { wantedLabels } from './label-rep.ts';
import { placeLabels } from './place-labels.ts';
import { boxesOfRuler, drawRuler } from './ruler.ts';
import { across, apart, around, bearingDeg, inflate, plus, towards } from './spots.ts';
import { standBeside } from './stand-beside.ts';
import { windPlace } from './wind-place.ts';

/** Sizes of marks on a labelled card, in the drawing's units; a small card has them at `SMALL`. */
const STOP_HALF = 22;
const WHISTLE_HALF = 10;
const CAST_ROOM = 19;
const HEAD = 14;
const OBSTACLE_HALF = 50;
const SMALL = 0.58;

/**
 * Draws a rep to scale: metres of the picture become units of the card at one scale, out is up, the send point at the
 * foot. Pure: same picture, same card, same words, same drawing. Throws RangeError on places that are not finite.
 */
export function drawRep(picture: RepPicture, box: CardBox, words: CardWords): RepDrawing {
  const scale = fitCard(picture, box);
  const size = box.labels ? 1 : SMALL;
  const marks = strokeMarks(picture, scale, size);
  const people = peopleMarks(picture, scale, size);
  const obstacles = obstacleMarks(picture, scale, size, box);
  const things = picture.things.map(
    (thing): Mark => ({
      mark: 'thing',
      at: scale.toCard(thing),
      kind: thing.kind,
      role: thing.role,
      isUnseen: thing.goal === 'blind',
      size: box.labels ? 1 : 0.66,
    }),
  );
  const crossing = marks.filter(({ mark }) => mark === 'cast' || mark === 'stop' || mark === 'whistle');
  const way = marks.filter((mark) => !crossing.includes(mark));
  const all: Mark[] = [...obstacles, ...way, ...people, ...things, ...crossing];
  const bare = { box, metresPerUnit: 1 / scale.unitsPerMetre, send: scale.send, marks: all };
  if (!box.labels)
    return { ...bare, cover: drawCover(picture.cover, box, []), ruler: null, wind: null, labels: [] };

  const foot = picture.strokes.some((stroke) => stroke.kind === 'sit')
    ? scale.toCard(picture.handlerAt).y
    : scale.send.y;
  const ruler = drawRuler(box, foot, scale.unitsPerMetre, words);
  const rulerBoxes = boxesOfRuler(ruler);
  const drawn = all.flatMap(boxesOfMark);
  const wind = windPlace(picture.layout, 0, box, drawn);
  const windBoxes = wind ? [around(wind.at, 21)] : [];
  const labels = placeLabels(
    wantedLabels(picture, scale, all, wind?.at ?? null, obstacles, box, words),
    box,
    [...rulerBoxes, ...windBoxes],
    drawn,
  );
  const keepOff = [...labels.map((label) => inflate(label.box, 3)), ...rulerBoxes, ...windBoxes, ...drawn];
  return { ...bare, cover: drawCover(picture.cover, box, keepOff), ruler, wind, labels };
}

/** The way the dog is going where a stop or a cast comes: along the line, else straight out. */
function wayOn(picture: RepPicture, scale: CardScale): Spot {
  const line = picture.strokes.find((stroke) => stroke.kind === 'line');
  return line ? towards(scale.toCard(line.from), scale.toCard(line.to)) : { x: 0, y: -1 };
}

/** What is painted first lies under what comes after: the way not run, the way run, then what crosses it. */
const PAINTED: readonly RepStroke['kind'][] = [
  'unrun',
  'line',
  'recall',
  'hunt',
  'cast',
  'stop',
  'whistle',
  'sit',
];

function strokeMarks(picture: RepPicture, scale: CardScale, size: number): Mark[] {
  const on = wayOn(picture, scale);
  const ends = picture.things.map(scale.toCard);
  return [...picture.strokes]
    .sort((a, b) => PAINTED.indexOf(a.kind) - PAINTED.indexOf(b.kind))
    .map((stroke) => strokeMark(stroke, scale, size, on, ends))
    .filter((mark) => mark !== null);
}

function strokeMark(
  stroke: RepStroke,
  scale: CardScale,
  size: number,
  on: Spot,
  ends: readonly Spot[],
): Mark | null {
  switch (stroke.kind) {
    case 'line':
    case 'unrun':
    case 'recall': {
      const [from, to] = [scale.toCard(stroke.from), scale.toCard(stroke.to)];
      const headPath =
        stroke.kind === 'recall'
          ? arrowHead(plus(to, towards(to, from), 18 * size), towards(from, to), HEAD * size)
          : '';
      return { mark: stroke.kind, from, to, headPath };
    }
    case 'stop':
    case 'whistle': {
      const at = scale.toCard(stroke.at);
      const half = (stroke.kind === 'stop' ? STOP_HALF : WHISTLE_HALF) * size;
      return { mark: stroke.kind, at, from: plus(at, across(on), -half), to: plus(at, across(on), half) };
    }
    case 'cast': {
      const [from, to] = [scale.toCard(stroke.from), scale.toCard(stroke.to)];
      const room = ends.some((end) => apart(end, to) < 14) ? CAST_ROOM * size : 0;
      return drawCast(stroke.side, from, to, on, room, HEAD * size);
    }
    case 'hunt':
      return { mark: 'hunt', at: scale.toCard(stroke.at), radius: stroke.radiusM * scale.unitsPerMetre };
    case 'sit':
      return null;
  }
}

/** Each obstacle across the way of its own leg; none where the layout has a jump of its own. */
function obstacleMarks(
  picture: RepPicture,
  scale: CardScale,
  size: number,
  box: CardBox,
): NonNullable<ReturnType<typeof drawObstacle>>[] {
  if (picture.things.some((thing) => thing.kind === 'jump')) return [];
  return picture.obstacles
    .map(({ level, from, to }) =>
      drawObstacle(level, scale.toCard(from), scale.toCard(to), OBSTACLE_HALF * size, box),
    )
    .filter((mark) => mark !== null);
}

/** Handler and dog; side by side where they stand at one place, and the handler looking where the work is. */
function peopleMarks(picture: RepPicture, scale: CardScale, size: number): Mark[] {
  const on = wayOn(picture, scale);
  const sit = picture.strokes.find((stroke) => stroke.kind === 'sit');
  const handlerAt = scale.toCard(picture.handlerAt);
  const dogAt = scale.toCard(sit?.kind === 'sit' ? sit.at : picture.dogAt);
  const { together, standing } = standBeside(handlerAt, dogAt, on, size);
  const aim = together ? on : towards(handlerAt, handlerLooksAt(picture, scale, handlerAt, dogAt, on));
  const handler: Mark = { mark: 'handler', at: handlerAt, aimDeg: bearingDeg(aim), size };
  const dog: Mark = { mark: 'dog', at: standing, aimDeg: bearingDeg(on), size };
  return size < 1 && together ? [handler] : [dog, handler];
}

/** The handler faces the dog where it sits or runs towards him, else where the dog is stopped or sent to. */
function handlerLooksAt(picture: RepPicture, scale: CardScale, handlerAt: Spot, dogAt: Spot, on: Spot): Spot {
  if (picture.strokes.some((stroke) => stroke.kind === 'sit')) return dogAt;
  const inFront = (handlerAt.x - dogAt.x) * on.x + (handlerAt.y - dogAt.y) * on.y > 1;
  const beside =
    Math.abs((handlerAt.x - dogAt.x) * on.y - (handlerAt.y - dogAt.y) * on.x) > apart(handlerAt, dogAt) / 2;
  if (inFront && !beside) return dogAt;
  const work = picture.strokes.find((stroke) => stroke.kind === 'stop' || stroke.kind === 'line');
  return work ? scale.toCard('at' in work ? work.at : work.to) : plus(handlerAt, on, 10);
}
