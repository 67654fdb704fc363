import type { PlanePoint, RepPicture } from '@sedgeline/engine/ground';
import type { CardWords } from './card-words.ts';
import type { CardBox, Mark, Spot } from './drawing.ts';
import type { CardScale } from './fit-card.ts';
import { cornerLabel, type WantedLabel } from './place-labels.ts';

type PictureThing = RepPicture['things'][number];

/** The name of a thing on the card: its own label, else what its leg's sentence calls it, else what it is. */
export function thingName(thing: PictureThing, words: CardWords): string {
  if (thing.label) return thing.label;
  return thing.goal === null ? words.thing(thing.kind, thing.role) : words.goal(thing.goal);
}

const apartM = (a: PlanePoint, b: PlanePoint): number => Math.hypot(a.eastM - b.eastM, a.northM - b.northM);

/** How far a thing lies along the way that goes to it: the cast's where it is cast to, else from the send point. Metres. */
export function thingDistanceM(thing: PictureThing, picture: RepPicture): number {
  const cast = picture.strokes.find((stroke) => stroke.kind === 'cast');
  if (cast && thing.role === 'asked' && apartM(thing, cast.to) < 0.5) return cast.lengthM;
  return apartM(thing, picture.sendFrom);
}

/** An obstacle drawn: how high, and its end nearest the foot of the card. */
export interface PlacedObstacle {
  readonly level: number;
  readonly foot: Spot;
}

/** Every label a card would like, the most important first. */
export function wantedLabels(
  picture: RepPicture,
  scale: CardScale,
  marks: readonly Mark[],
  wind: Spot | null,
  obstacles: readonly PlacedObstacle[],
  box: CardBox,
  words: CardWords,
): WantedLabel[] {
  const wanted: WantedLabel[] = [];
  const castGoesRight = picture.strokes.some((stroke) => stroke.kind === 'cast' && stroke.side === 'right');
  const free = castGoesRight ? (['left', 'right'] as const) : (['right', 'left'] as const);
  for (const stroke of picture.strokes) {
    const at = 'at' in stroke ? scale.toCard(stroke.at) : null;
    if (stroke.kind === 'whistle' && at) {
      wanted.push({
        text: words.blow(stroke.distanceM),
        tone: 'clay',
        at,
        reachX: 24,
        tieFromX: 10,
        reachY: 8,
        sides: free,
        tied: true,
      });
    }
    if (stroke.kind === 'stop' && at) {
      wanted.push({
        text: words.halts(stroke.distanceM),
        tone: 'strong',
        at,
        reachX: 24,
        reachY: 8,
        sides: free,
        tied: true,
      });
    }
  }
  const byRole = namedThings(picture);
  for (const thing of byRole) {
    const text = words.thingAt(thingName(thing, words), thingDistanceM(thing, picture));
    const reach = { reachX: 20, reachY: 12 };
    wanted.push({
      text,
      tone: 'note',
      at: scale.toCard(thing),
      ...reach,
      sides: ['right', 'below', 'left', 'above'],
      tied: true,
    });
  }
  for (const mark of marks) {
    if (mark.mark === 'handler') {
      const sides = ['right', 'below', 'left'] as const;
      wanted.push({ text: words.you, tone: 'note', at: mark.at, reachX: 13, reachY: 13, sides, tied: false });
    }
    if (mark.mark === 'dog') {
      const sides = ['left', 'below', 'right'] as const;
      const text = words.dogName ?? words.dog;
      wanted.push({ text, tone: 'note', at: mark.at, reachX: 9, reachY: 11, sides, tied: false });
    }
  }
  for (const { level, foot } of obstacles) {
    wanted.push({
      text: words.obstacle(level),
      tone: 'water',
      at: foot,
      reachX: 6,
      reachY: 4,
      sides: ['below', 'left', 'right', 'above'],
      tied: false,
    });
  }
  if (wind) {
    const text = words.wind(picture.layout.windMPerS ?? 0);
    wanted.push({
      text,
      tone: 'water',
      at: wind,
      reachX: 18,
      reachY: 18,
      sides: ['below', 'right', 'above'],
      tied: false,
    });
  }
  const cover = words.cover(picture.cover);
  if (cover) wanted.push(cornerLabel(cover, 'note', { x: 6, y: 18 }));
  return wanted.filter((label) => label.text !== '' && box.labels);
}

/** Things worth a name, most important first; of other dummies only the one nearest in angle, which tempts most. */
function namedThings(picture: RepPicture): PictureThing[] {
  const offLine = (thing: PictureThing): number =>
    Math.abs(Math.atan2(thing.eastM - picture.sendFrom.eastM, thing.northM - picture.sendFrom.northM));
  const isCrowd = (thing: PictureThing): boolean =>
    thing.kind === 'dummy' && thing.role === 'other' && thing.goal === null && !thing.label;
  const crowd = picture.things.filter(isCrowd).sort((a, b) => offLine(a) - offLine(b));
  const named = [...picture.things.filter((thing) => !isCrowd(thing)), ...crowd.slice(0, 1)];
  return named.sort((a, b) => rank(a) - rank(b));
}

const rank = (thing: PictureThing): number =>
  thing.role === 'asked' ? 0 : thing.kind === 'hazard' ? 1 : thing.role === 'other' ? 2 : 3;
