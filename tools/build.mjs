import { existsSync, readFileSync, rmSync } from 'node:fs';
import { inputStamp, keepStamp, stampIs } from './input-stamp.mjs';
import { install } from './install.mjs';
import { filesUnder, inRoot, runAsMain, ToolFailure } from './repository.mjs';
import { runNode } from './run-command.mjs';

const NOT_BUILT = /\.(test|bench|spec|e2e|fixture)\.tsx?$/;
const enter = (name) => !['node_modules', 'dist', 'e2e', '.vite'].includes(name);
const sources = (folder) => filesUnder(inRoot(folder), { enter }).filter((path) => !NOT_BUILT.test(path));
const shared = () => ['package-lock.json', 'tsconfig.base.json', 'tools/build.mjs', ...sources('packages')];

function requireEntry(path) {
  if (!existsSync(inRoot(path))) {
    throw new ToolFailure('BUILD_ENTRY_MISSING', `${path} is not there; get it back from the repository`);
  }
}

/** Builds one part unless its inputs are the ones it was last built from. */
async function buildPart(name, { entry, result, inputs, make }) {
  requireEntry(entry);
  const stampFile = inRoot(result, `.${name}-stamp`);
  const stamp = inputStamp(inputs, process.version);
  if (stampIs(stampFile, stamp)) return false;
  rmSync(stampFile, { force: true });
  process.stderr.write(`Building ${name} ...\n`);
  await make();
  keepStamp(stampFile, stamp);
  return true;
}

/** The app of the phone and the browser, with vite's manifest beside it (the size budget reads it). */
export const buildWeb = () =>
  buildPart('web', {
    entry: 'apps/web/index.html',
    result: 'apps/web/dist',
    inputs: [...shared(), 'tsconfig.json', ...sources('apps/web')],
    make: async () => {
      const vite = inRoot('node_modules', 'vite', 'bin', 'vite.js');
      const args = ['build', '--manifest', '--logLevel', 'warn', '--emptyOutDir'];
      const { code, text } = await runNode(vite, args, { cwd: inRoot('apps', 'web') });
      if (code !== 0)
        throw new ToolFailure('BUILD_FAILED', `the web app does not build; vite says:\n${text}`);
    },
  });

const NODE_BANNER =
  "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);";

/** Packages that a bundle leaves outside: all that an app depends on, except our own, which are TypeScript source. */
export function outsidePackages(manifest) {
  const named = { ...manifest.dependencies, ...manifest.optionalDependencies };
  return Object.keys(named).filter((name) => !name.startsWith('@sedgeline/'));
}

/** esbuild's options for a Node program in one file. */
const nodeBundle = (entry, outfile, external) => ({
  entryPoints: [inRoot(entry)],
  outfile: inRoot(outfile),
  bundle: true,
  format: 'esm',
  platform: 'node',
  target: 'node20.19',
  external,
  banner: { js: NODE_BANNER },
  legalComments: 'none',
  logLevel: 'silent',
});

function buildNodeProgram(name, app, entry, outfile, externalOf) {
  return buildPart(name, {
    entry,
    result: `${app}/dist`,
    inputs: [...shared(), ...sources(app)],
    make: async () => {
      const { build: bundle, formatMessages } = await import('esbuild');
      const manifest = JSON.parse(readFileSync(inRoot(app, 'package.json'), 'utf8'));
      try {
        await bundle(nodeBundle(entry, outfile, externalOf(manifest)));
      } catch (error) {
        const said = (await formatMessages(error.errors ?? [], { kind: 'error' })).join('') || String(error);
        throw new ToolFailure('BUILD_FAILED', `${entry} does not bundle; esbuild says:\n${said}`);
      }
    },
  });
}

/** Four megabytes that the Opus decoder would load to mend speech, were it asked to: it never is. */
const SPEECH_MENDER = '@wasm-audio-decoders/opus-ml';

/** The command line program: everything in one file, so that it starts at once. */
export const buildCli = () =>
  buildNodeProgram('cli', 'apps/cli', 'apps/cli/src/sedgeline.ts', 'apps/cli/dist/sedgeline.mjs', () => [
    SPEECH_MENDER,
  ]);

/** The server: our own code in one file, its packages beside it in node_modules. */
export const buildServer = () =>
  buildNodeProgram(
    'server',
    'apps/server',
    'apps/server/src/main.ts',
    'apps/server/dist/server.mjs',
    outsidePackages,
  );

/** Builds all that is not built yet. */
export async function build() {
  await buildCli();
  await buildServer();
  await buildWeb();
}

await runAsMain(import.meta.url, async () => {
  await install();
  await build();
});
