import { existsSync } from 'node:fs';
import { arrowComplaints, followArrows } from './arrows.mjs';
import { buildWeb } from './build.mjs';
import { purityComplaints, wordComplaints } from './house-words.mjs';
import { install } from './install.mjs';
import { inRoot, runAsMain, ToolFailure } from './repository.mjs';
import { runNode } from './run-command.mjs';
import { sizeBudget } from './size-budget.mjs';

const inModules = (...parts) => inRoot('node_modules', ...parts);

/** A step that is a program of its own: its output is the complaint when it fails. */
const program =
  (script, ...args) =>
  async () => {
    const { code, text } = await runNode(script, args);
    return { complaints: code === 0 ? [] : [text.trim() || `it ended with status ${code}`] };
  };

const STEPS = [
  ['types of the packages', program(inModules('typescript', 'bin', 'tsc'), '-p', 'tsconfig.pure.json')],
  ['types of everything', program(inModules('typescript', 'bin', 'tsc'), '-p', 'tsconfig.json')],
  [
    'format and lint',
    program(inModules('@biomejs', 'biome', 'bin', 'biome'), 'check', '--error-on-warnings', '--colors=off'),
  ],
  [
    'arrows and cycles',
    async () => {
      const found = await followArrows(
        ['packages', 'apps', 'bench', 'studies'].filter((folder) => existsSync(inRoot(folder))),
      );
      return { complaints: arrowComplaints(found), figure: `${found.modules} modules` };
    },
  ],
  ['dead code and packages', program(inModules('knip', 'bin', 'knip.js'), '--no-progress')],
  ['purity of the packages', async () => ({ complaints: purityComplaints() })],
  ['words', async () => ({ complaints: wordComplaints() })],
  [
    'size of the first load',
    async () => {
      await buildWeb();
      return sizeBudget();
    },
  ],
];

async function runStep([name, run]) {
  const startedMs = performance.now();
  let result;
  try {
    result = await run();
  } catch (error) {
    const said = error instanceof ToolFailure ? `error[${error.code}]: ${error.message}` : error.stack;
    result = { complaints: [said] };
  }
  const tookS = ((performance.now() - startedMs) / 1000).toFixed(1);
  const good = result.complaints.length === 0;
  const figure = result.figure === undefined ? '' : ` (${result.figure})`;
  process.stdout.write(`${good ? 'ok    ' : 'FAILED'} ${tookS.padStart(5)} s  ${name}${figure}\n`);
  return { name, complaints: result.complaints };
}

/** Runs every step, prints each with its time, and then what the first that failed had to say. */
async function check() {
  await install();
  const results = [];
  for (const step of STEPS) results.push(await runStep(step));
  const failed = results.filter(({ complaints }) => complaints.length > 0);
  const [first] = failed;
  if (first === undefined) return;
  process.stdout.write(`\n${first.name}:\n${first.complaints.join('\n')}\n`);
  const names = failed.map(({ name }) => name).join(', ');
  throw new ToolFailure(
    'CHECK_FAILED',
    `${failed.length} of ${results.length} failed: ${names}; mend the first above`,
  );
}

await runAsMain(import.meta.url, check);
