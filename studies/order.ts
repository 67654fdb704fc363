/**
 * Can the next send be guessed? The hazard of a clean send after none to three stops and the best guess by length and share, exactly,
 * beside ways that are wrong on purpose. Prints the page and writes docs/order.md. Run: `npx tsx studies/order.ts [seed]`; with
 * `--long` ten times the sessions are drawn, and nothing is written.
 */

import { writeFileSync } from 'node:fs';
import { orderPage } from './order/order-page.ts';

const isLong = process.argv.includes('--long');
const seed = Number(process.argv.slice(2).find((word) => word !== '--long') ?? 1);
const page = orderPage(isLong ? 200_000 : 20_000, seed);
if (!isLong) writeFileSync(new URL('../docs/order.md', import.meta.url), page);
console.log(page);
