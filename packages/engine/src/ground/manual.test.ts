import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type LayoutWarning, LINE_WARNING_CODES } from './layout-warnings.ts';

const manual = readFileSync(new URL('../../../../docs/layout.md', import.meta.url), 'utf8');
/** Every code; the compiler keeps the list whole. */
const CODES: Readonly<Record<LayoutWarning['code'], true>> = {
  'hazard-on-line': true,
  'hazard-near-line': true,
  'on-the-way': true,
  'beyond-in-line': true,
  'narrow-gap': true,
  'scent-across': true,
  'passes-handler': true,
  'longer-than-an-ask': true,
  'at-send-point': true,
  together: true,
  'send-apart': true,
  'same-name': true,
  'wind-half-told': true,
  'no-line': true,
};

describe('docs/layout.md', () => {
  it.each(Object.keys(CODES))('names %s', (code) => expect(manual).toContain(`\`${code}\``));

  it('has the codes of a line among them', () =>
    expect(Object.keys(CODES)).toEqual(expect.arrayContaining([...LINE_WARNING_CODES])));
});
