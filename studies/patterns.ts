/**
 * Are the seven patterns found where they were planted, and not claimed where they were not? Careers by a mechanism that is not
 * the model. Prints the table and writes docs/patterns.md. Run: `npx tsx studies/patterns.ts [careers] [seed]`.
 */

import { writeFileSync } from 'node:fs';
import { ourDetector, rawShareDetector } from './patterns/detectors.ts';
import { judgeDetectors } from './patterns/judge-detector.ts';
import { patternsPage } from './patterns/patterns-page.ts';

const careers = Number(process.argv[2] ?? 60);
const seed = Number(process.argv[3] ?? 1);
const [ours, raw] = judgeDetectors([ourDetector, rawShareDetector], careers, seed);
const page = patternsPage(ours!, raw!, seed);
writeFileSync(new URL('../docs/patterns.md', import.meta.url), page);
console.log(page);
