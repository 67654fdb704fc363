import type { RepPicture, RepStroke } from '@sedgeline/engine/ground';
import type { CardWords } from './card-words.ts';
import { thingDistanceM, thingName } from './label-rep.ts';

/** The text that stands for a card: everything drawn, in order, with its figures. */
export function sayRep(picture: RepPicture, words: CardWords): string {
  const way = picture.strokes.map((stroke) => sayStroke(stroke, words)).filter((text) => text !== '');
  const things = picture.things.map((thing) =>
    words.thingAt(thingName(thing, words), thingDistanceM(thing, picture)),
  );
  const handlerM = Math.hypot(
    picture.handlerAt.eastM - picture.sendFrom.eastM,
    picture.handlerAt.northM - picture.sendFrom.northM,
  );
  const where = handlerM > 1 ? [words.said.handlerApart(handlerM)] : [];
  const { windMPerS, windFromDeg } = picture.layout;
  const wind = windMPerS && windFromDeg !== undefined ? [words.wind(windMPerS)] : [];
  const obstacles = picture.obstacles.map(({ level, on }) => words.said.obstacle(level, on));
  const ground = [words.cover(picture.cover), ...obstacles].filter((text) => text !== '');
  const parts = [...way, ...things, ...where, ...ground, ...wind];
  const text = parts.length > 0 ? parts.join('; ') : words.said.nothing;
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function sayStroke(stroke: RepStroke, { said }: CardWords): string {
  switch (stroke.kind) {
    case 'line':
      return said.line(stroke.lengthM);
    case 'stop':
      return said.stop(stroke.distanceM);
    case 'whistle':
      return said.whistle(stroke.distanceM);
    case 'cast':
      return said.cast(stroke.side, stroke.lengthM);
    case 'recall':
      return said.recall(stroke.lengthM);
    case 'hunt':
      return said.hunt(stroke.radiusM);
    case 'sit':
      return said.sit;
    case 'unrun':
      return '';
  }
}
