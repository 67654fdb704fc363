import { expect, it } from 'vitest';
import { checkGround } from './check-ground.ts';

const draft = { name: ' Long Acre ', lat: '', lon: '', note: '' };

it('takes a name alone, or with a place, latitude 89 included', () => {
  expect(checkGround(draft, [])).toEqual({ ok: true, ground: { name: 'Long Acre' } });
  expect(checkGround({ ...draft, lat: '89', lon: '-179,5', note: 'ice' }, [])).toEqual({
    ok: true,
    ground: { name: 'Long Acre', latDeg: 89, lonDeg: -179.5, note: 'ice' },
  });
});

it.each([
  [{ name: '  ' }, { name: 'name-empty' }],
  [{ name: 'x'.repeat(61) }, { name: 'name-long' }],
  [{ name: 'LOWER meadow' }, { name: 'name-taken' }],
  [{ lat: '91', lon: '0' }, { lat: 'lat-range' }],
  [{ lat: '52', lon: '-181' }, { lon: 'lon-range' }],
  [{ lat: 'north', lon: '0' }, { lat: 'lat-range' }],
  [{ lat: '52' }, { lon: 'half-place' }],
  [{ lon: '0' }, { lat: 'half-place' }],
])('%j: %j', (change, faults) => {
  expect(checkGround({ ...draft, ...change }, ['Lower Meadow'])).toEqual({ ok: false, faults });
});
