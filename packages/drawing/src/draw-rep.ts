import type { RepPicture, RepStroke } from '@sedgeline/engine/ground';
import type { CardWords } from './card-words.ts';
import { arrowHead, drawCast } from './draw-cast.ts';
import { drawCover } from './draw-cover.ts';
import { drawObstacle } from './draw-obstacle.ts';
import type { Box, CardBox, Mark, RepDrawing, Spot } from './drawing.ts';
import { type CardScale, fitCard } from './fit-card.ts';
import { wantedLabels } from './label-rep.ts';
import { placeLabels } from './place-labels.ts';
import { drawRuler } from './ruler.ts';
import { across, apart, around, bearingDeg, boxesAlong, inflate, overlap, plus, towards } from './spots.ts';
import { textWidth } from './text-width.ts';

/** Sizes of marks on a labelled card, in the drawing's units; a small card has them at `SMALL`. */
const STOP_HALF = 22;
const WHISTLE_HALF = 10;
const CAST_ROOM = 19;
const HEAD = 14;
const OBSTACLE_HALF = 50;
const SMALL = 0.58;
/** The dog stands this far beside the handler where the two are at one place. */
const BESIDE = 24;

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
  const rulerBoxes = ruler.ticks.map((tick) => {
    const width = (tick.text ? textWidth(tick.text, 13) + 12 : 4) + 8;
    return { x: ruler.x - width, y: tick.y - 9, width: width + 8, height: 18 };
  });
  const drawn = all.flatMap(markBoxes);
  const wind = windPlace(picture, box, drawn);
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
  const together = apart(handlerAt, dogAt) < BESIDE * size;
  const standing = together ? plus(handlerAt, across(on), -BESIDE * size) : dogAt;
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

/** The wind arrow stands in the corner where least is drawn. */
function windPlace(picture: RepPicture, box: CardBox, drawn: readonly Box[]): RepDrawing['wind'] {
  const { windFromDeg, windMPerS } = picture.layout;
  if (windFromDeg === undefined || !windMPerS) return null;
  const corners: readonly Spot[] = [
    { x: 40, y: box.height - 46 },
    { x: box.width - 100, y: box.height - 46 },
    { x: 40, y: 40 },
    { x: box.width - 100, y: 40 },
  ];
  const crowd = (at: Spot): number =>
    drawn.reduce((sum, taken) => sum + overlap(around({ x: at.x, y: at.y + 8 }, 30), taken), 0);
  const at = corners.reduce((best, corner) => (crowd(corner) < crowd(best) - 1 ? corner : best));
  return { at, towardsDeg: (windFromDeg + 180) % 360 };
}

/** What a mark covers on the card, roughly: labels are kept off it. */
function markBoxes(mark: Mark): Box[] {
  switch (mark.mark) {
    case 'line':
    case 'unrun':
    case 'recall':
    case 'stop':
    case 'whistle':
      return boxesAlong(mark.from, mark.to, 4);
    case 'cast':
      return mark.along.map((at) => around(at, 6));
    case 'hunt':
      return [around(mark.at, mark.radius * 0.7)];
    case 'thing':
      return [around(mark.at, 15 * mark.size)];
    case 'handler':
      return [around(mark.at, 13 * mark.size)];
    case 'dog':
      return [around(mark.at, 9 * mark.size, 11 * mark.size)];
    case 'obstacle':
      return boxesAlong(mark.from, mark.to, 4);
  }
}
