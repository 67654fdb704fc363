import { bench, describe } from 'vitest';
import type { Layout } from './layout.ts';
import { layoutLines } from './layout-lines.ts';
import { layoutWarnings } from './layout-warnings.ts';

const layout: Layout = {
  handlerAt: { eastM: 0, northM: 0 },
  things: Array.from({ length: 12 }, (_, k) => ({
    thing: `t${k}`,
    kind: k % 3 === 2 ? 'hazard' : 'dummy',
    eastM: 80 * Math.sin(k),
    northM: 80 * Math.cos(k),
  })),
  windFromDeg: 240,
  windMPerS: 4,
};

describe('a layout of twelve things', () => {
  bench('lines', () => void layoutLines(layout));
  bench('warnings', () => void layoutWarnings(layout));
  bench('written as JSON, to compare', () => void JSON.stringify(layout));
});
