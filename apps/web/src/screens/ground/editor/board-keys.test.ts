import { expect, it } from 'vitest';
import { boardKey, movedBy } from './board-keys.ts';

const press = (key: string, more = {}) => ({
  key,
  shiftKey: false,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  ...more,
});

it('moves by one and by five of the shown unit', () => {
  expect(boardKey(press('ArrowUp'), 1)).toEqual({ key: 'move', rightM: 0, upM: 1 });
  expect(boardKey(press('ArrowLeft', { shiftKey: true }), 1)).toEqual({ key: 'move', rightM: -5, upM: 0 });
  // A yard is 0.9144 m by the agreement of 1959.
  expect(boardKey(press('ArrowRight', { shiftKey: true }), 0.9144)).toEqual({
    key: 'move',
    rightM: 4.572,
    upM: 0,
  });
});

it('has a key for everything, and leaves the browser its own', () => {
  for (const [key, kind] of Object.entries({ p: 'post', d: 'dummy', h: 'hazard', j: 'jump', m: 'other' }))
    expect(boardKey(press(key.toUpperCase()), 1)).toMatchObject({ key: 'add', what: { kind } });
  expect(boardKey(press('b'), 1)).toEqual({ key: 'add', what: { kind: 'dummy', blind: true } });
  expect(boardKey(press('z', { ctrlKey: true }), 1)).toEqual({ key: 'undo' });
  expect(boardKey(press('Z', { metaKey: true, shiftKey: true }), 1)).toEqual({ key: 'redo' });
  expect(boardKey(press('y', { ctrlKey: true }), 1)).toEqual({ key: 'redo' });
  expect(boardKey(press('p', { ctrlKey: true }), 1)).toBeNull();
  expect(boardKey(press('d', { altKey: true }), 1)).toBeNull();
  expect(boardKey(press('Tab'), 1)).toBeNull();
});

it('goes up the drawing, whatever bearing is up there: east up, one up is one east, one right is one south', () => {
  const up = movedBy({ eastM: 3, northM: 4 }, { rightM: 0, upM: 1 }, 90);
  expect(up.eastM).toBeCloseTo(4, 9);
  expect(up.northM).toBeCloseTo(4, 9);
  const right = movedBy({ eastM: 3, northM: 4 }, { rightM: 1, upM: 0 }, 90);
  expect(right.eastM).toBeCloseTo(3, 9);
  expect(right.northM).toBeCloseTo(3, 9);
});
