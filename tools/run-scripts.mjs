import { pathToFileURL } from 'node:url';
import { install } from './install.mjs';
import { filesUnder, inRoot, ToolFailure } from './repository.mjs';
import { runCommand } from './run-command.mjs';

/** The scripts of a folder: its own TypeScript files, tests left out; those of its folders serve them. */
export const scriptsOf = (folder) =>
  filesUnder(inRoot(folder), { enter: () => false }).filter((path) => /(?<!\.test|\.d)\.ts$/.test(path));

/**
 * Runs each script of a folder in turn, each in a process of its own, so that none warms up another. `names`, where
 * given, picks those whose path holds one of them. All are run; then a failure names those that failed.
 */
export async function runScripts(folder, names, scriptArgs) {
  await install();
  const wanted = scriptsOf(folder).filter(
    (path) => names.length === 0 || names.some((name) => path.includes(name)),
  );
  if (wanted.length === 0) throw new ToolFailure('NO_SCRIPT', `nothing to run in ${folder}/; check the name`);
  const tsx = pathToFileURL(inRoot('node_modules', 'tsx', 'dist', 'loader.mjs')).href;
  const failed = [];
  for (const path of wanted) {
    process.stdout.write(`\n== ${path}\n`);
    const args = ['--import', tsx, inRoot(path), ...scriptArgs];
    const { code } = await runCommand(process.execPath, args, { output: 'inherit' });
    if (code !== 0) failed.push(path);
  }
  if (failed.length > 0) throw new ToolFailure('SCRIPT_FAILED', `failed: ${failed.join(', ')}; see above`);
}
