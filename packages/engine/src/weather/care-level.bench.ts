import { bench, describe } from 'vitest';
import { careCautions } from './care-cautions.ts';
import { careLevel } from './care-level.ts';
import { wbgtEstimateC } from './wbgt-estimate.ts';

const day = { airC: 28, humidityPct: 64, sun: 0.6, windMPerS: 3, ageMonths: 30 };

describe('the care of a day', () => {
  bench('its level', () => void careLevel(day));
  bench('its cautions', () => void careCautions(day));
  bench('WBGT', () => void wbgtEstimateC(28, 64, 0.6));
  bench('written as JSON, to compare', () => void JSON.stringify(day));
});
