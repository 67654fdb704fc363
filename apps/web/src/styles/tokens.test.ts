import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { contrastRatio, luminance } from './contrast.ts';
import { THEMES, type ThemeName } from './tokens.ts';

const css = readFileSync(new URL('./tokens.css', import.meta.url), 'utf8');
const block = (from: string): string => css.slice(css.indexOf(from), css.indexOf('}', css.indexOf(from)));
const kebab = (name: string): string => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

describe('contrast, from the definition', () => {
  it('is 21 for black on white and 1 for a colour on itself (WCAG 2.2, definition of contrast ratio)', () => {
    expect(contrastRatio('#000000', '#ffffff')).toBeCloseTo(21, 10);
    expect(contrastRatio('#8c3510', '#8c3510')).toBe(1);
  });
  it('gives 0.2126 for pure red (WCAG 2.2, weight of red)', () => {
    expect(luminance('#ff0000')).toBeCloseTo(0.2126, 10);
  });
  it('refuses another form of colour', () => {
    expect(() => luminance('red')).toThrow(RangeError);
  });
});

/** WCAG 2.2: 1.4.6 asks 7 for text (AAA), 1.4.3 asks 4.5 (AA), 1.4.11 asks 3 for the edges of keys and marks. */
describe.each<[ThemeName, number]>([
  ['sun', 7],
  ['dusk', 7],
])('%s', (theme, text) => {
  const colours = THEMES[theme];
  const grounds = ['paper', 'card', 'wash', 'grass'] as const;
  const pairs = (['ink', 'soft', 'clay', 'water'] as const).flatMap((word) =>
    grounds.map((ground) => [word, ground] as const),
  );
  it.each(pairs)(`%s on %s is at least ${text}`, (word, ground) => {
    expect(contrastRatio(colours[word], colours[ground])).toBeGreaterThanOrEqual(text);
  });
  it.each(grounds)('sedge as text on %s, and the main key itself', (ground) => {
    expect(contrastRatio(colours.sedge, colours[ground])).toBeGreaterThanOrEqual(text);
    expect(contrastRatio(colours.onSedge, colours.sedge)).toBeGreaterThanOrEqual(text);
  });
  it.each(grounds)('the edge of a field and the dog stand out from %s by 3', (ground) => {
    expect(contrastRatio(colours.edge, colours[ground])).toBeGreaterThanOrEqual(3);
    expect(contrastRatio(colours.reed, colours[ground])).toBeGreaterThanOrEqual(3);
  });
  it('stands in the style sheet as it stands here', () => {
    const text = block(theme === 'sun' ? ':root {' : ':root[data-theme="dusk"] {');
    for (const [name, value] of Object.entries(colours))
      expect(text).toContain(`--${kebab(name)}: ${value};`);
  });
});

it('follows the device into dusk with the same colours', () => {
  const text = block(':root:not([data-theme]) {');
  for (const [name, value] of Object.entries(THEMES.dusk))
    expect(text).toContain(`--${kebab(name)}: ${value};`);
});
