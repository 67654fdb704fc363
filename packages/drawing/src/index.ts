export type { CardWords } from './card-words.ts';
export { drawRep } from './draw-rep.ts';
export type { CardBox, Mark, RepDrawing, Spot } from './drawing.ts';
export { paintAttributes } from './paint-attributes.ts';
export { sayRep } from './say-rep.ts';
export type { Ink, Shape } from './shape.ts';
export { shapesOfDrawing } from './shapes-of-drawing.ts';
export { type SvgPicture, svgText } from './svg-text.ts';
export { textWidth } from './text-width.ts';
