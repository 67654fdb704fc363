/**
 * How fast is listening, and how much memory does it take? An hour of made field sound at 48 kHz, 16 bits, written once to a temporary file, then
 * `sedgeline listen` on it as a program of its own, start included; beside it the samples alone through a plain short-time transform of 2,048
 * samples every 256, and through a general library of sound figures (Meyda) at the same frames, in this process. Times are of the processor. Run on a built program: `npx tsx bench/listen.ts [minutes]`.
 */
import { spawnSync } from 'node:child_process';
import { closeSync, mkdtempSync, openSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { wavHeader } from '../apps/web/e2e/sounds/made-field.ts';
import { makeRecording } from '../studies/sound/make-recording.ts';
import { sceneOf } from '../studies/sound/sets.ts';
import { createLibraryFigures } from './listen/library-figures.ts';
import { createPlainTransform } from './listen/plain-transform.ts';

const MINUTES = Number(process.argv[2] ?? 60);
const PEER_MINUTES = 6;
const RATE = 48_000;
const PROGRAM = fileURLToPath(new URL('../apps/cli/bin/sedgeline.mjs', import.meta.url));

/** Two minutes of the field, again and again: what is in it matters little to the time. */
const parts = [0, 1, 2, 3].map((index) => {
  const scene = { ...sceneOf('tune', 'field', index), sampleRateHz: RATE };
  return makeRecording(scene).samples;
});
const folder = mkdtempSync(join(tmpdir(), 'listen-bench-'));
const file = join(folder, 'hour.wav');
const times = Math.round((MINUTES * 60) / 30);

try {
  const pcm = parts.map((part) => Int16Array.from(part, (x) => Math.round(32_767 * x)));
  const fd = openSync(file, 'w');
  writeSync(fd, wavHeader(RATE, times * 30 * RATE * 2));
  for (let k = 0; k < times; k++) writeSync(fd, new Uint8Array(pcm[k % pcm.length]!.buffer));
  closeSync(fd);

  // The child tells its own processor time and greatest memory when it ends.
  const tell =
    "process.on('exit', () => { const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage(); process.stderr.write(JSON.stringify({ cpuS: (userCPUTime + systemCPUTime) / 1e6, mib: maxRSS / 1024 })); });";
  const before = `data:text/javascript,${encodeURIComponent(tell)}`;
  const child = spawnSync(process.execPath, ['--import', before, PROGRAM, 'listen', file, '--json'], {
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
  });
  if (child.status !== 0) throw new Error(child.stderr);
  const { cpuS, mib } = JSON.parse(child.stderr) as { cpuS: number; mib: number };
  const heard = JSON.parse(child.stdout) as { whistles: unknown[]; clicks: unknown[]; durationS: number };
  /** Processor time of all of the sound, pushed part by part, from that of its first minutes: each minute costs the same. */
  const timeOf = (push: (samples: Float32Array) => void): number => {
    const some = Math.min(times, 2 * PEER_MINUTES);
    const from = process.cpuUsage();
    for (let k = 0; k < some; k++) push(parts[k % parts.length]!);
    const { user, system } = process.cpuUsage(from);
    return ((user + system) / 1e6) * (times / some);
  };
  const plain = createPlainTransform();
  const plainS = timeOf(plain.push);
  const library = createLibraryFigures(RATE);
  const libraryS = timeOf(library.push);
  process.stdout.write(
    [
      `${heard.durationS} s of sound: ${heard.whistles.length} blasts, ${heard.clicks.length} clicks`,
      `listen, start included: ${cpuS.toFixed(1)} s, ${(heard.durationS / cpuS).toFixed(0)} times real time, ${mib.toFixed(0)} MiB at most`,
      `plain transform alone: ${plainS.toFixed(1)} s, ${(heard.durationS / plainS).toFixed(0)} times real time (loudest ${plain.loudest().toFixed(0)}); ratio ${(plainS / cpuS).toFixed(2)}`,
      `Meyda's figures alone: ${libraryS.toFixed(1)} s, ${(heard.durationS / libraryS).toFixed(0)} times real time (flattest ${library.flattest().toExponential(1)}); ratio ${(libraryS / cpuS).toFixed(2)}`,
      '',
    ].join('\n'),
  );
} finally {
  rmSync(folder, { recursive: true });
}
