import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { WhistleCaution } from './whistle-cautions.ts';

const manual = readFileSync(new URL('../../../../docs/whistle.md', import.meta.url), 'utf8');
/** Every code; the compiler keeps the list whole. */
const CODES: Readonly<Record<WhistleCaution['code'], true>> = {
  'too-late': true,
  'decide-before-send': true,
  'not-heard': true,
  'thin-margin': true,
  wind: true,
  ears: true,
};

describe('docs/whistle.md', () => {
  it.each(Object.keys(CODES))('names %s', (code) => expect(manual).toContain(`\`${code}\``));
});
