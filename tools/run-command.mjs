import { spawn } from 'node:child_process';
import { root } from './repository.mjs';

/**
 * Runs a program to its end. `output`: `inherit` lets it write where we write, `stderr` sends both of its streams to our
 * standard error (ours stays clean), `capture` collects both into `text` in the order in which they came.
 * Never throws for a program that fails: `code` is its exit status, `null` when it was ended by a signal, by
 * `limitMs` (milliseconds), or could not be started; `text` then says so.
 */
export function runCommand(
  program,
  args,
  { cwd = root, env = process.env, output = 'capture', limitMs } = {},
) {
  return new Promise((resolve) => {
    const stdio = {
      inherit: ['ignore', 'inherit', 'inherit'],
      stderr: ['ignore', process.stderr, process.stderr],
      capture: ['ignore', 'pipe', 'pipe'],
    }[output];
    const child = spawn(program, args, { cwd, env, stdio });
    let text = '';
    let timedOut = false;
    const take = (chunk) => {
      text += chunk;
    };
    child.stdout?.setEncoding('utf8').on('data', take);
    child.stderr?.setEncoding('utf8').on('data', take);
    const timer =
      limitMs === undefined
        ? undefined
        : setTimeout(() => {
            timedOut = true;
            child.kill('SIGKILL');
          }, limitMs);
    const finish = (code) => {
      clearTimeout(timer);
      resolve({ code, text, timedOut });
    };
    child.on('error', (error) => {
      text += error.message;
      finish(null);
    });
    child.on('close', (code) => finish(code));
  });
}

/** Runs a Node script of the repository or of one of its packages. */
export const runNode = (script, args, options) => runCommand(process.execPath, [script, ...args], options);

/** Runs npm: the one that started us, where npm did, else the one on the path. */
export function runNpm(args, options) {
  const own = process.env.npm_execpath;
  if (own?.endsWith('.js') || own?.endsWith('.cjs')) return runNode(own, args, options);
  return runCommand('npm', args, options);
}
