import { describe, expect, test } from 'vitest';
import { failureLine, listenFailure } from './server-failure.ts';
import { readSettings } from './settings.ts';

const read = (...args: string[]) => readSettings(args, '/built');

describe('settings', () => {
  test('left out, only this machine is answered', () => {
    expect(read()).toEqual({
      ok: true,
      value: { host: '127.0.0.1', port: 4180, endsWithInput: false, webFolder: '/built' },
    });
  });
  test('what is given is taken', () => {
    const wanted = { host: '0.0.0.0', port: 0, endsWithInput: true, webFolder: '/other' };
    expect(read('--port', '0', '--host=0.0.0.0', '--web', '/other', '--ends-with-input')).toEqual({
      ok: true,
      value: wanted,
    });
  });
  test.each([
    ['--port', 'x'],
    ['--port', '65536'],
    ['--port=-1'],
    ['--port=1.5'],
    ['--port'],
    ['--host='],
    ['--prot', '1'],
    ['stray'],
  ])('%s %s is wrong usage', (...args) => {
    const got = read(...args.filter((arg) => arg !== undefined));
    expect(got).toMatchObject({ ok: false, failure: { code: 'USAGE' } });
  });
});

describe('failures', () => {
  test('are one line with a code and what to do', () => {
    expect(failureLine({ code: 'USAGE', message: 'one\n  two; three' })).toBe('error[USAGE]: one two; three');
  });
  test.each([
    ['EADDRINUSE', 'PORT_TAKEN'],
    ['EACCES', 'PORT_FORBIDDEN'],
    ['EADDRNOTAVAIL', 'LISTEN_FAILED'],
  ])('%s is told as %s', (errno, code) => {
    const error = Object.assign(new Error('refused'), { code: errno });
    expect(listenFailure(error, '127.0.0.1', 80).code).toBe(code);
  });
});
