import { expect, it } from 'vitest';
import { readFigure } from './read-figure.ts';

it('reads what a thumb types, or nothing, and says when it is no figure of the range', () => {
  expect(readFigure('', 0, 100)).toEqual({ ok: true, value: undefined });
  expect(readFigure(' 14 ', -40, 60)).toEqual({ ok: true, value: 14 });
  expect(readFigure('14,5', -40, 60)).toEqual({ ok: true, value: 14.5 });
  expect(readFigure('−3', -40, 60)).toEqual({ ok: true, value: -3 });
  for (const wrong of ['61', '-41', 'hot', '1e1', '1.2.3', '--1', 'NaN'])
    expect(readFigure(wrong, -40, 60)).toEqual({ ok: false });
});
