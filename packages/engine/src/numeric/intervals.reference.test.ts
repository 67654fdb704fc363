import { expect, it } from 'vitest';
import intervals from '../../reference/intervals.json' with { type: 'json' };
import { newcombeInterval, wilsonInterval } from './proportion-interval.ts';

// 1e-7 everywhere: the figures' printed digits.
it.each(intervals.single)('Wilson $x of $n at $conf', ({ x, n, conf, wilson }) => {
  const [low, high] = wilsonInterval(x, n, conf);
  expect(Math.abs(low - wilson[0]!)).toBeLessThan(1e-7);
  expect(Math.abs(high - wilson[1]!)).toBeLessThan(1e-7);
});

it.each(intervals.differences)('Newcombe $x1/$n1 - $x2/$n2', ({ x1, n1, x2, n2, newcombe }) => {
  const [low, high] = newcombeInterval(x1, n1, x2, n2);
  expect(Math.abs(low - newcombe[0]!)).toBeLessThan(1e-7);
  expect(Math.abs(high - newcombe[1]!)).toBeLessThan(1e-7);
});

it('reads the whole files', () => {
  expect(intervals.single.length).toBe(49);
  expect(intervals.differences.length).toBe(12);
});

it('names what is wrong', () => {
  expect(() => wilsonInterval(3, 0)).toThrow(/^n: /);
  expect(() => wilsonInterval(4, 3)).toThrow(/^x: /);
});
