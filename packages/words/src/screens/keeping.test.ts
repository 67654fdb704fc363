import { expect, it } from 'vitest';
import { words } from '../words.ts';

const { keeping } = words();

it('says how many came back, and from where', () => {
  expect(keeping.restored(1)).toMatch(/^1 entry was gone .* was restored from the second copy/);
  expect(keeping.restored(12)).toMatch(/^12 entries were gone .* were restored from the second copy/);
});

it('says how many are gone, and what to do', () => {
  expect(keeping.missing(1)).toMatch(
    /^1 entry that was .* is gone, .* does not have it .* Bring back your last export/,
  );
  expect(keeping.missing(40)).toMatch(/^40 entries that were .* are gone, .* have them .* Bring back/);
});

it('says of a file what was added and what was not, and only that', () => {
  const none = { added: 0, known: 0, differing: 0, unreadable: 0 };
  expect(keeping.broughtBack({ ...none, added: 3, known: 1 })).toBe('3 entries added; 1 was here already.');
  expect(keeping.broughtBack({ ...none, known: 5, differing: 1, unreadable: 2 })).toBe(
    '0 entries added; 5 were here already. 1 entry differs from the one here: what is here stays. 2 lines could not be read.',
  );
});

it('says how far the clock is behind, in the unit that is read at a glance', () => {
  expect(keeping.behind(1)).toContain('is 1 minute behind');
  expect(keeping.behind(60)).toContain('is 60 minutes behind');
  expect(keeping.behind(180)).toContain('is 3 hours behind');
  expect(keeping.behind(4 * 1440)).toContain('is 4 days behind');
});
