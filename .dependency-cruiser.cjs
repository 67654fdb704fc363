/**
 * The arrows of the house, as in ARCHITECTURE.md:
 * quantity <- numeric <- {ground, whistle, weather, sound, track, ability} <- {session, season}; engine and journal do not
 * know each other; projections joins them; drawing knows engine; protocol and demo know journal; words knows nobody; apps never
 * import apps.
 */

/** One rule: files of `folder` may import no file of ours outside `allowed` (regular expressions, itself included). */
const onlyOurs = (name, folder, allowed, comment) => ({
  name,
  comment,
  severity: 'error',
  from: { path: folder },
  to: { path: '^(packages|apps)/', pathNot: [folder, ...allowed] },
});

/** One rule: a part of the engine may import itself and the parts below it, and no other part. */
const enginePart = (part, below) => ({
  name: `engine-${part}`,
  comment: `engine/${part} stands on ${below.length === 0 ? 'nothing' : below.join(', ')}`,
  severity: 'error',
  from: { path: `^packages/engine/src/${part}/` },
  to: {
    path: '^packages/engine/src/',
    pathNot: [part, ...below].map((name) => `^packages/engine/src/${name}/`),
  },
});

const ground = ['quantity', 'numeric'];
const field = ['ground', 'whistle', 'weather', 'sound', 'track', 'ability'];
const ownTest = '\\.(test|bench|fixture)\\.tsx?$|/reference/|-kit\\.ts$';

module.exports = {
  forbidden: [
    { name: 'no-circular', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'not-to-unresolvable',
      comment: 'but for what a plugin of the build makes up',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '^virtual:' },
    },
    onlyOurs('engine-alone', '^packages/engine/', [], 'the engine knows nothing else of ours'),
    onlyOurs('journal-alone', '^packages/journal/', [], 'the journal knows nothing else of ours'),
    onlyOurs('words-alone', '^packages/words/', [], 'the words know nobody'),
    onlyOurs(
      'projections-join',
      '^packages/projections/',
      ['^packages/(engine|journal)/'],
      'projections join engine and journal, and nothing else',
    ),
    onlyOurs(
      'protocol-on-journal',
      '^packages/protocol/',
      ['^packages/journal/'],
      'protocol knows the journal',
    ),
    onlyOurs(
      'demo-on-journal',
      '^packages/demo/',
      ['^packages/journal/'],
      'the demo knows the journal alone',
    ),
    {
      name: 'drawing-on-engine',
      comment:
        'drawing knows the engine; its words are handed in, and only its tests take them from the catalogue',
      severity: 'error',
      from: { path: '^packages/drawing/', pathNot: ownTest },
      to: { path: '^(packages|apps)/', pathNot: '^packages/(drawing|engine)/' },
    },
    {
      name: 'apps-apart',
      comment: 'an app never imports another app; browser tests start the server as a process',
      severity: 'error',
      from: { path: '^apps/([^/]+)/' },
      to: { path: '^apps/', pathNot: '^apps/$1/' },
    },
    enginePart('quantity', []),
    enginePart('numeric', ['quantity']),
    ...field.map((part) => enginePart(part, ground)),
    ...['session', 'season'].map((part) => enginePart(part, [...ground, ...field])),
    {
      name: 'pure-packages',
      comment: 'packages compute; they touch no file, clock or network',
      severity: 'error',
      from: { path: '^packages/', pathNot: ownTest },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'no-dev-dependency-in-source',
      comment: 'what ships needs its package among the dependencies',
      severity: 'error',
      from: { path: '^(packages|apps)/[^/]+/src/', pathNot: ownTest },
      to: {
        dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown'],
        dependencyTypesNot: ['type-only', 'npm'],
      },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    exclude: { path: '(^|/)dist/' },
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'default'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json', '.d.ts'],
    },
  },
};
