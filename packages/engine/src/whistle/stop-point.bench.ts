import { bench, describe } from 'vitest';
import { carryingTo, usualSound } from './carrying.ts';
import { usualStopConditions } from './stop-conditions.ts';
import { stopAtPlace } from './stop-point.ts';
import { overrunInterval90M } from './stop-spread.ts';

describe('a stop at 60 m', () => {
  bench('when to blow', () => void stopAtPlace(60, usualStopConditions));
  bench('whether it carries', () => void carryingTo(60, usualSound));
  bench('its interval', () => void overrunInterval90M(57, usualStopConditions));
  bench('a thousand square roots, to compare', () => {
    let sum = 0;
    for (let k = 0; k < 1000; k++) sum += Math.sqrt(k + sum);
    if (sum < 0) throw new RangeError('sum: expected > 0');
  });
});
