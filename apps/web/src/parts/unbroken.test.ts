import { expect, it } from 'vitest';
import { unbroken } from './unbroken.ts';

it('ties a figure to its unit, and nothing else', () => {
  expect(unbroken('Stop at 12 m, then back 20 m')).toBe('Stop at 12\u00a0m, then back 20\u00a0m');
  expect(unbroken('Steady for 5 s, line of 60 yd')).toBe('Steady for 5\u00a0s, line of 60\u00a0yd');
  expect(unbroken('From 1 h 2 min 40 s')).toBe('From 1\u00a0h 2\u00a0min 40\u00a0s');
  expect(unbroken('2 marks, 3 stops, 86 in 100')).toBe('2 marks, 3 stops, 86 in 100');
});
