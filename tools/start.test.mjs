import { once } from 'node:events';
import { createServer } from 'node:net';
import { describe, expect, test } from 'vitest';
import { outsidePackages } from './build.mjs';
import { firstFreePort, portIsFree } from './free-port.mjs';
import { inputStamp } from './input-stamp.mjs';
import { installFitsLock, installStamp, nodeIsNewEnough } from './install.mjs';
import { wantedPort } from './start.mjs';
import { wantedRunners } from './test.mjs';

describe('the port', () => {
  test.each([
    [[], {}, 4180],
    [[], { PORT: '' }, 4180],
    [[], { PORT: '5000' }, 5000],
    [['--port', '6000'], { PORT: '5000' }, 6000],
    [['--port=7000'], {}, 7000],
  ])('%j with %j is %i', (args, env, port) => {
    expect(wantedPort(args, env)).toBe(port);
  });
  test.each([[['--port']], [['--port', 'x']], [['--port=0']], [['--port=70000']], [['--port=']]])(
    '%j is refused',
    (args) => {
      expect(() => wantedPort(args, {})).toThrow(/the port|whole number/);
    },
  );
  test('that is taken gives way to the next', async () => {
    const holder = createServer().listen(0, '127.0.0.1');
    await once(holder, 'listening');
    const { port } = holder.address();
    expect(await portIsFree(port, '127.0.0.1')).toBe(false);
    expect(await firstFreePort(port)).toBeGreaterThan(port);
    expect(await firstFreePort(port, '127.0.0.1', 1)).toBeNull();
    await new Promise((done) => holder.close(done));
    expect(await firstFreePort(port)).toBe(port);
  });
});

describe('the install', () => {
  test.each([
    ['v20.19.0', true],
    ['v20.20.2', true],
    ['v22.0.0', true],
    ['v20.18.9', false],
    ['v18.20.4', false],
  ])('Node %s is new enough: %s', (version, enough) => {
    expect(nodeIsNewEnough(version)).toBe(enough);
  });
  const lock = {
    packages: {
      '': { name: 'house' },
      'node_modules/a': { version: '1.0.0' },
      'node_modules/b': { version: '2.0.0', optional: true },
      'node_modules/ours': { resolved: 'packages/ours', link: true },
    },
  };
  const { '': _house, 'node_modules/b': _optional, ...needed } = lock.packages;
  test('fits with an optional package missing', () => {
    expect(installFitsLock(lock, { packages: needed })).toBe(true);
  });
  test.each([
    ['a package missing', { ...needed, 'node_modules/a': undefined }],
    ['another version', { ...needed, 'node_modules/a': { version: '1.0.1' } }],
    ['an optional package at another version', { ...needed, 'node_modules/b': { version: '1.0.0' } }],
    [
      'a copy where our own package should be linked',
      { ...needed, 'node_modules/ours': { version: '0.1.0' } },
    ],
    ['nothing', {}],
  ])('does not fit with %s', (_what, packages) => {
    expect(installFitsLock(lock, { packages })).toBe(false);
  });
  test('another lock, Node or platform asks for another install', () => {
    const stamps = [
      installStamp('lock', '115', 'linux-x64'),
      installStamp('lock2', '115', 'linux-x64'),
      installStamp('lock', '127', 'linux-x64'),
      installStamp('lock', '115', 'darwin-arm64'),
    ];
    expect(new Set(stamps).size).toBe(4);
  });
});

test('a build is stamped by what it reads, not by the order or the time', () => {
  const [one, two] = ['tools/start.mjs', 'tools/build.mjs'];
  expect(inputStamp([one, two])).toBe(inputStamp([two, one]));
  expect(inputStamp([one, two])).not.toBe(inputStamp([one]));
  expect(inputStamp([one], 'v20')).not.toBe(inputStamp([one], 'v22'));
});

test('a bundle holds our packages and leaves those of others outside', () => {
  const manifest = {
    dependencies: { fastify: '5', '@sedgeline/journal': '0.1.0' },
    optionalDependencies: { db: '1' },
  };
  expect(outsidePackages(manifest)).toEqual(['fastify', 'db']);
});

test('the runners asked for', () => {
  expect(wantedRunners([])).toEqual({ unit: true, browser: true });
  expect(wantedRunners(['--unit'])).toEqual({ unit: true, browser: false });
  expect(wantedRunners(['--browser'])).toEqual({ unit: false, browser: true });
  expect(() => wantedRunners(['--fast'])).toThrow(/--fast is no option/);
});
