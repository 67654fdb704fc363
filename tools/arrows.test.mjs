import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { arrowComplaints, followArrows } from './arrows.mjs';
import { inRoot } from './repository.mjs';

// Each planted import breaks one arrow of ARCHITECTURE.md; the innocent ones break none.
const PLANTED = [
  ['packages/engine/src/ability/by-name.ts', "import { fact } from '@sedgeline/journal';", 'engine-alone'],
  [
    'packages/engine/src/ability/by-type.ts',
    "import type { Fact } from '@sedgeline/journal';",
    'engine-alone',
  ],
  [
    'packages/engine/src/ability/by-path.ts',
    "import { fact } from '../../../journal/src/index.ts';",
    'engine-alone',
  ],
  ['packages/engine/src/ability/sideways.ts', "import { gap } from '../ground/index.ts';", 'engine-ability'],
  ['packages/engine/src/numeric/upwards.ts', "import { plan } from '../session/index.ts';", 'engine-numeric'],
  [
    'packages/journal/src/to-engine.ts',
    "import { gap } from '../../engine/src/ground/index.ts';",
    'journal-alone',
  ],
  [
    'packages/demo/src/to-engine.ts',
    "import { gap } from '../../engine/src/ground/index.ts';",
    'demo-on-journal',
  ],
  ['packages/words/src/to-journal.ts', "import { fact } from '../../journal/src/index.ts';", 'words-alone'],
  ['apps/web/e2e/to-server.ts', "import { app } from '../../server/src/main.ts';", 'apps-apart'],
  ['packages/journal/src/to-disk.ts', "import { readFileSync } from 'node:fs';", 'pure-packages'],
  ['packages/journal/src/astray.ts', "import { lost } from './nowhere.ts';", 'not-to-unresolvable'],
  ['packages/journal/src/about.ts', "import './round.ts'; export const about = 1;", 'no-circular'],
  ['packages/journal/src/to-devtool.ts', "import { devtool } from 'devtool';", 'no-dev-dependency-in-source'],
];
const INNOCENT = [
  ['packages/journal/src/index.ts', 'export const fact = 1; export type Fact = number;'],
  ['packages/journal/src/round.ts', "import { about } from './about.ts';"],
  ['packages/journal/src/disk.test.ts', "import 'node:fs';"],
  ['packages/engine/src/ground/index.ts', 'export const gap = 1;'],
  ['packages/engine/src/session/index.ts', "export { gap as plan } from '../ground/index.ts';"],
  [
    'packages/projections/src/join.ts',
    "import '@sedgeline/journal'; import '../../engine/src/ground/index.ts';",
  ],
  ['node_modules/devtool/index.js', 'exports.devtool = 1;'],
  ['apps/server/src/main.ts', "import 'node:fs'; import '@sedgeline/journal'; export const app = 1;"],
];

let tree;
beforeAll(() => {
  tree = mkdtempSync(join(tmpdir(), 'sedgeline-arrows-'));
  for (const [path, text] of [...PLANTED, ...INNOCENT]) {
    mkdirSync(dirname(join(tree, path)), { recursive: true });
    writeFileSync(join(tree, path), `${text}\n`);
  }
  const manifest = { name: '@sedgeline/journal', type: 'module', exports: { '.': './src/index.ts' } };
  Object.assign(manifest, { devDependencies: { devtool: '1.0.0' } });
  writeFileSync(join(tree, 'packages/journal/package.json'), JSON.stringify(manifest));
  const dependent = { name: 'dependent', type: 'module', dependencies: { '@sedgeline/journal': '0.1.0' } };
  writeFileSync(join(tree, 'package.json'), JSON.stringify(dependent));
  for (const config of ['tsconfig.json', 'tsconfig.base.json']) cpSync(inRoot(config), join(tree, config));
  mkdirSync(join(tree, 'node_modules/@sedgeline'), { recursive: true });
  symlinkSync(join(tree, 'packages/journal'), join(tree, 'node_modules/@sedgeline/journal'), 'junction');
});
afterAll(() => rmSync(tree, { recursive: true }));

test('every planted import is caught by its rule, and no innocent one', async () => {
  const { broken, modules } = await followArrows(['packages', 'apps'], tree);
  const caught = broken.map(({ rule, from }) => `${rule}: ${from}`).sort();
  expect(caught).toEqual(PLANTED.map(([path, , rule]) => `${rule}: ${path}`).sort());
  expect(modules).toBeGreaterThanOrEqual(PLANTED.length + INNOCENT.length - 1);
});

test('a check that read nothing is a failure, not a clean house', () => {
  const complaints = arrowComplaints({ modules: 0, broken: [], said: 'no TypeScript' });
  expect(complaints).toEqual(['only 0 modules were read, expected more than 50; no TypeScript']);
  expect(arrowComplaints({ modules: 51, broken: [], said: '' })).toEqual([]);
});
