import type { RepDrawing } from './drawing.ts';
import { paintAttributes } from './paint-attributes.ts';
import { INKS, type Ink, type Shape } from './shape.ts';
import { shapesOfDrawing } from './shapes-of-drawing.ts';
import { n } from './spots.ts';

/**
 * Values of the inks where nobody else gives them: those of the Sun theme on white, so that the drawing prints. Inside a page
 * that has the house's tokens (`--ink` and so on) the page's own are taken.
 */
const SUN: Readonly<Record<Ink, string>> = {
  ink: '#16201a',
  soft: '#3d4941',
  line: '#c9cbbb',
  grass: '#ffffff',
  card: '#ffffff',
  sedge: '#1f5a3a',
  reed: '#6b5a1e',
  clay: '#88320e',
  water: '#17506f',
};
const FACE = "'Atkinson Hyperlegible Next', Helvetica, Arial, sans-serif";

/** What a drawing is, for who cannot see it. */
export interface SaidDrawing {
  readonly title: string;
  readonly desc: string;
}

/**
 * A drawing as an SVG 1.1 document of its own (W3C 2011): title and description, no script, no font and no file from
 * elsewhere. Each colour stands as a plain attribute, which every reader of SVG knows, and again as a rule with the
 * house's token, which only a page that has the tokens answers. Its scale and send point stand on the root, so that every
 * place can be read back in metres. Tested in `svg-text.test.ts`.
 */
export function svgText(drawing: RepDrawing, { title, desc }: SaidDrawing): string {
  const { box, metresPerUnit, send } = drawing;
  const { width, height } = box;
  const rules = INKS.map(
    (ink) => `.s-${ink}{stroke:var(--${ink},${SUN[ink]})}.f-${ink}{fill:var(--${ink},${SUN[ink]})}`,
  ).join('');
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="title desc" data-metres-per-unit="${metresPerUnit}" data-send-x="${n(send.x)}" data-send-y="${n(send.y)}">`,
    `<title id="title">${escaped(title)}</title>`,
    `<desc id="desc">${escaped(desc)}</desc>`,
    `<style>${rules}</style>`,
    `<rect width="${width}" height="${height}" class="f-grass" fill="${SUN.grass}"/>`,
    `<g fill="none" stroke-linecap="round" stroke-linejoin="round" font-family="${escaped(FACE)}">`,
    ...shapesOfDrawing(drawing).map(element),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

function element(shape: Shape): string {
  const { tag, at, data, paint, text, children } = shape;
  const classes = [
    paint?.stroke && `s-${paint.stroke}`,
    paint?.fill && paint.fill !== 'none' && `f-${paint.fill}`,
  ].filter(Boolean);
  const all = {
    ...(classes.length > 0 && { class: classes.join(' ') }),
    ...at,
    ...Object.fromEntries(Object.entries(data ?? {}).map(([name, value]) => [`data-${name}`, value])),
    ...paintAttributes(shape, (ink) => SUN[ink]),
  };
  const attributes = Object.entries(all)
    .map(([name, value]) => ` ${name}="${escaped(String(value))}"`)
    .join('');
  const inside = `${text === undefined ? '' : escaped(text)}${children?.map(element).join('') ?? ''}`;
  return inside === '' ? `<${tag}${attributes}/>` : `<${tag}${attributes}>${inside}</${tag}>`;
}

/** What may not stand in XML 1.0 at all: most control characters, halves of surrogate pairs, the last two of the plane. */
const NOT_XML = /[\p{Cs}\u{FFFE}\u{FFFF}]|(?![\t\n\r])\p{Cc}/gu;
const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

const escaped = (text: string): string =>
  text.replace(NOT_XML, '').replace(/[&<>"]/g, (letter) => ENTITIES[letter] ?? letter);
