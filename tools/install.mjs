import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { inRoot, runAsMain, ToolFailure } from './repository.mjs';
import { runNpm } from './run-command.mjs';

const NEEDED_NODE = [20, 19];

/** Whether a Node version such as `v20.20.2` is at least the one that the repository needs. */
export function nodeIsNewEnough(version, [major, minor] = NEEDED_NODE) {
  const [haveMajor = 0, haveMinor = 0] = version.replace(/^v/, '').split('.').map(Number);
  return haveMajor > major || (haveMajor === major && haveMinor >= minor);
}

/**
 * Whether what npm says is installed (`node_modules/.package-lock.json`) is what the lock file wants: each entry at its
 * version. Entries that npm may leave out (optional ones of other platforms, optional peers) may be missing.
 */
export function installFitsLock(lock, installed) {
  const have = installed.packages ?? {};
  return Object.entries(lock.packages ?? {}).every(([path, wanted]) => {
    if (path === '') return true;
    const found = have[path];
    if (found === undefined)
      return wanted.optional === true || wanted.devOptional === true || wanted.peer === true;
    return found.link === wanted.link && found.version === wanted.version;
  });
}

/** What the stamp of a finished install says: another lock, Node or platform asks for another install. */
export const installStamp = (lockText, nodeAbi, platform) =>
  createHash('sha256').update(`${nodeAbi}\n${platform}\n${lockText}`).digest('hex');

/** Installs what is missing, and nothing when it is all there. All output goes to standard error. */
export async function install() {
  if (!nodeIsNewEnough(process.version)) {
    const need = NEEDED_NODE.join('.');
    throw new ToolFailure(
      'NODE_TOO_OLD',
      `Node ${process.version} is too old for this program; install Node ${need} or newer`,
    );
  }
  const lockFile = inRoot('package-lock.json');
  if (!existsSync(lockFile)) {
    throw new ToolFailure('LOCK_MISSING', 'package-lock.json is not there; get it back from the repository');
  }
  const lockText = readFileSync(lockFile, 'utf8');
  const stampFile = inRoot('node_modules', '.sedgeline-install');
  const stamp = installStamp(lockText, process.versions.modules, `${process.platform}-${process.arch}`);
  if (existsSync(stampFile) && readFileSync(stampFile, 'utf8') === stamp) return { installed: false };
  const installedFile = inRoot('node_modules', '.package-lock.json');
  const fits =
    !existsSync(stampFile) &&
    existsSync(installedFile) &&
    installFitsLock(JSON.parse(lockText), JSON.parse(readFileSync(installedFile, 'utf8')));
  if (!fits) {
    process.stderr.write('Installing what the program needs (the first time takes a minute or two) ...\n');
    const { code } = await runNpm(['ci', '--include=dev', '--no-audit', '--no-fund'], { output: 'stderr' });
    if (code !== 0) {
      throw new ToolFailure(
        'INSTALL_FAILED',
        'npm ci did not finish; its own words are above: mend that (often the network) and start again',
      );
    }
  }
  writeFileSync(stampFile, stamp);
  return { installed: !fits };
}

await runAsMain(import.meta.url, install);
