import { inRoot, root } from './repository.mjs';
import { runNode } from './run-command.mjs';

/** Fewer modules than this and the check read nothing: with a TypeScript it cannot use it finds 0 and is content. */
export const LEAST_MODULES = 50;

/**
 * Follows every import of `folders` under `cwd` by the rules of `.dependency-cruiser.cjs`: how many modules were read,
 * and each import that breaks a rule.
 */
export async function followArrows(folders, cwd = root) {
  const cruise = inRoot('node_modules', 'dependency-cruiser', 'bin', 'dependency-cruise.mjs');
  const args = ['--config', inRoot('.dependency-cruiser.cjs'), '--output-type', 'json', ...folders];
  const { text } = await runNode(cruise, args, { cwd });
  if (!text.startsWith('{')) return { modules: 0, broken: [], said: text };
  const { summary } = JSON.parse(text);
  const broken = summary.violations.map(({ rule, from, to }) => ({ rule: rule.name, from, to }));
  return { modules: summary.totalCruised, broken, said: '' };
}

/** What is wrong with the arrows, one line each; nothing when all is well. */
export function arrowComplaints({ modules, broken, said }, leastModules = LEAST_MODULES) {
  const lines = broken.map(({ rule, from, to }) => `${rule}: ${from} -> ${to}`);
  if (modules > leastModules) return lines;
  return [...lines, `only ${modules} modules were read, expected more than ${leastModules}; ${said}`.trim()];
}
