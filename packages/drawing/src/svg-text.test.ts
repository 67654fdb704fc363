import { drawnRep } from '@sedgeline/engine/session';
import { words } from '@sedgeline/words';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { drawRep } from './draw-rep.ts';
import { sayRep } from './say-rep.ts';
import { svgText } from './svg-text.ts';

const BOX = { width: 366, height: 300, labels: true };
const picture = drawnRep([
  { skill: 'line', ask: { distanceM: 50, temptation: 'placed-dummy', cover: 2 } },
  { skill: 'stop', ask: { distanceM: 20, wayFraction: 0.4 } },
  { skill: 'cast-left', ask: { distanceM: 20, castM: 14, blind: true, obstacle: 1 } },
]);
const drawn = (dogName: string, title = 'Rep 1'): string => {
  const said = { ...words().picture, dogName };
  const desc = sayRep(picture, said);
  return svgText(drawRep(picture, BOX, said), { title, desc });
};

const ATTRIBUTE = /^\s([\w-]+(?::\w+)?)="([^"<]*)"/;
/** An `&` begins one of XML's own names or a number, and nothing else. */
const LOOSE_AMPERSAND = /&(?!(?:amp|lt|gt|quot|apos|#\d+|#x[\da-f]+);)/i;

/** What XML 1.0 asks of a document (W3C 2008, 2.1 to 3.1), read tag by tag: the first complaint, or null. */
function complaint(xml: string): string | null {
  const open: string[] = [];
  for (const [whole, close, name = '', attributes = '', empty, text] of xml.matchAll(
    /<(\/)?([a-z]+)((?:\s[\w-]+="[^"<]*")*)(\/)?>|([^<]+|<)/gi,
  )) {
    if (LOOSE_AMPERSAND.test(whole)) return `a loose ampersand in ${whole}`;
    if (text !== undefined) {
      if (text === '<') return 'a loose "<"';
      if (text.trim() !== '' && open.length === 0) return `text outside the root: ${text}`;
    } else if (close) {
      if (open.pop() !== name) return `</${name}> closes nothing`;
    } else {
      const names: string[] = [];
      for (let rest = attributes; rest !== ''; ) {
        const found = ATTRIBUTE.exec(rest);
        if (found === null) return `${name}: ${rest}`;
        names.push(found[1] ?? '');
        rest = rest.slice(found[0].length);
      }
      if (new Set(names).size < names.length) return `${name} has an attribute twice`;
      if (!empty) open.push(name);
    }
  }
  return open.length === 0 ? null : `${open.join(', ')} never closed`;
}

it('is well-formed whatever a dog or a rep is called', () => {
  expect(complaint(drawn('Wren'))).toBeNull();
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), fc.string({ unit: 'binary' }), (dog, title) => {
      const svg = drawn(dog, title);
      expect(complaint(svg)).toBeNull();
      // XML 1.0, 2.2: no control characters but tab and line ends.
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not be there
      expect(svg).not.toMatch(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/);
    }),
    { numRuns: 100 },
  );
});

it('says what it is: a title, then the whole picture in words', () => {
  const svg = drawn('Wren', 'Blind & "ditch" <1>');
  expect(svg).toContain('<title id="title">Blind &amp; &quot;ditch&quot; &lt;1&gt;</title>');
  expect(svg).toMatch(/<desc id="desc">Line of 20 m; stop at 20 m;[^<]*left 14 m[^<]*<\/desc>/);
  expect(svg).toContain('aria-labelledby="title desc"');
});

it('needs nothing from elsewhere, and has a plain colour beside every token', () => {
  const svg = drawn('Wren');
  expect(svg.replace('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|url\(|@import|<script|<image/);
  const coloured = [...svg.matchAll(/<[a-z]+ class="([^"]*)"([^>]*)>/g)];
  expect(coloured.length).toBeGreaterThan(10);
  for (const [, names = '', rest = ''] of coloured) {
    if (names.includes('s-')) expect(rest).toMatch(/ stroke="#[0-9a-f]{6}"/);
    if (names.includes('f-')) expect(rest).toMatch(/ fill="#[0-9a-f]{6}"/);
  }
});
