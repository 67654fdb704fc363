import { writeFileSync } from 'node:fs';
import type { ScoreNumbers } from '../../packages/engine/src/sound/learned-score.ts';

const FOLDER = new URL('../../packages/engine/src/sound/', import.meta.url);

function lines(values: readonly number[]): string {
  const rows = Array.from({ length: Math.ceil(values.length / 8) }, (_, k) => values.slice(8 * k, 8 * k + 8));
  return rows.map((row) => `    ${row.join(', ')},\n`).join('');
}

/** Writes fitted numbers where the detector reads them; `npm run format` then lays the lines out. */
export function writeNumbers(file: string, name: string, what: string, numbers: ScoreNumbers): void {
  const { hidden, mean, sd, weights } = numbers;
  writeFileSync(
    new URL(file, FOLDER),
    [
      '// biome-ignore-all lint/suspicious/noApproximativeNumericConstant: fitted numbers may lie near anything\n',
      `import type { ScoreNumbers } from './learned-score.ts';\n\n`,
      `/** How surely a candidate is ${what}. Written by \`studies/sound-detector.ts\`, not by hand. */\n`,
      `export const ${name}: ScoreNumbers = {\n  hidden: ${hidden},\n`,
      `  mean: [\n${lines(mean)}  ],\n  sd: [\n${lines(sd)}  ],\n  weights: [\n${lines(weights)}  ],\n};\n`,
    ].join(''),
  );
}
