import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CARE_CODES } from './care-cautions.ts';
import { CARE_LEVELS } from './care-level.ts';

const manual = readFileSync(new URL('../../../../docs/weather.md', import.meta.url), 'utf8');

describe('docs/weather.md', () => {
  it.each([...CARE_CODES, ...CARE_LEVELS])('names %s', (code) => expect(manual).toContain(`\`${code}\``));
});
