/**
 * Advance widths of the face at weight 750, in hundredths of its size, rounded up to the next four: read from
 * Atkinson Hyperlegible Next 5.3.0 with a browser's text measure. A letter that is not here counts as the widest.
 */
const WIDTHS: readonly (readonly [number, string])[] = [
  [24, "'"],
  [28, ',j|'],
  [32, ' !.:;`i'],
  [36, '()[]l'],
  [40, '-frt{}°'],
  [44, '"I_'],
  [48, '1*/\\'],
  [52, 'csz'],
  [56, '79?Lavxy~'],
  [60, '23+<>EFJ^bdeghknopqu'],
  [64, '4568$=PSTZ'],
  [68, '0BCKRUVY'],
  [72, '&ADGHNX'],
  [76, 'OQw'],
  [80, '#@'],
  [84, '…'],
  [88, 'M'],
  [92, 'Wm'],
];
const WIDEST = 100;
const BY_LETTER = new Map(
  WIDTHS.flatMap(([width, letters]) => [...letters].map((letter) => [letter, width] as const)),
);

/** Width of a text at a size, never less than it is drawn: labels are placed by it. */
export function textWidth(text: string, size: number): number {
  let hundredths = 0;
  for (const letter of text) hundredths += BY_LETTER.get(letter) ?? WIDEST;
  return (hundredths * size) / 100;
}

/** The text, cut with an ellipsis where it is wider than there is room. */
export function cutToWidth(text: string, size: number, room: number): string {
  if (textWidth(text, size) <= room) return text;
  const letters = [...text];
  while (letters.length > 0 && textWidth(`${letters.join('').trimEnd()}…`, size) > room) letters.pop();
  return `${letters.join('').trimEnd()}…`;
}
