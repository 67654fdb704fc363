import { describe, expect, it } from 'vitest';
import { checkDog, type DogDraft } from './check-dog.ts';

const NOW_MS = Date.UTC(2026, 10, 25);
const draft = (change: Partial<DogDraft>): DogDraft => ({
  name: 'Teal',
  born: '',
  sex: 'unsaid',
  breed: '',
  ...change,
});
const faults = (change: Partial<DogDraft>, taken: string[] = []) => {
  const checked = checkDog(draft(change), taken, NOW_MS);
  return checked.ok ? {} : checked.faults;
};

describe('a new dog', () => {
  it('needs a name and nothing else', () => {
    expect(checkDog(draft({}), [], NOW_MS)).toEqual({ ok: true, dog: { name: 'Teal' } });
    expect(faults({ name: '   ' })).toEqual({ name: 'name-empty' });
  });
  it('keeps what was said, trimmed, and leaves out what was not', () => {
    const checked = checkDog(
      draft({ name: ' Teal ', born: '2024-02-29', sex: 'bitch', breed: ' Labrador ' }),
      [],
      NOW_MS,
    );
    expect(checked).toEqual({
      ok: true,
      dog: { name: 'Teal', born: '2024-02-29', sex: 'bitch', breed: 'Labrador' },
    });
  });
  it('knows a name again whatever its letters are', () => {
    expect(faults({ name: 'TEAL' }, ['teal '])).toEqual({ name: 'name-taken' });
  });
  it('counts letters, not bytes, up to 60', () => {
    expect(faults({ name: 'é'.repeat(60) })).toEqual({});
    expect(faults({ name: '🐕'.repeat(61) })).toEqual({ name: 'name-long' });
  });
  it('knows the calendar: 2023 had no 29 February, and no month has 31 twice', () => {
    expect(faults({ born: '2023-02-29' })).toEqual({ born: 'born-unreadable' });
    expect(faults({ born: '2026-04-31' })).toEqual({ born: 'born-unreadable' });
    expect(faults({ born: '12/3/2024' })).toEqual({ born: 'born-unreadable' });
  });
  it('lets today pass, not tomorrow, and not a dog of 26', () => {
    expect(faults({ born: '2026-11-25' })).toEqual({});
    expect(faults({ born: '2026-11-26' })).toEqual({ born: 'born-in-future' });
    expect(faults({ born: '2000-11-01' })).toEqual({ born: 'born-too-long-ago' });
  });
  it('says every fault at once, each at its field', () => {
    expect(faults({ name: '', born: 'soon' })).toEqual({ name: 'name-empty', born: 'born-unreadable' });
  });
});
