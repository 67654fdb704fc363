import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Recording } from './recording.ts';

/** A recording's sound after it was coded and decoded, aligned with what went in. */
export type Coder = (recording: Recording) => Pick<Recording, 'samples' | 'sampleRateHz'>;

/** How each coded condition is made with FFmpeg: its container keeps the count of priming samples, so the decoder takes them off. */
const WAYS = {
  'coded-aac': { file: 'coded.m4a', args: ['-c:a', 'aac', '-b:a', '64k'] },
  'coded-opus': { file: 'coded.ogg', args: ['-c:a', 'libopus', '-b:a', '24k'] },
} as const;

/** The program to run: `FFMPEG` when that is set, else what the path has. */
const ffmpegPath = () => process.env.FFMPEG ?? 'ffmpeg';

/** Whether an FFmpeg can be run here; without one the coded conditions cannot be measured. */
export const hasFfmpeg = () => spawnSync(ffmpegPath(), ['-version']).status === 0;

function ffmpeg(args: readonly string[]): void {
  const { status, stderr, error } = spawnSync(ffmpegPath(), ['-y', '-v', 'error', ...args], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`ffmpeg ${args.join(' ')}: ${error?.message ?? stderr}`);
}

function inFolder<T>(work: (folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'made-sound-'));
  try {
    return work(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const plainFloats = (sampleRateHz: number) => ['-f', 'f32le', '-ar', String(sampleRateHz), '-ac', '1'];

/** A sound file decoded by FFmpeg: one channel, at the rate asked for. */
export const decodedFile = (path: string, sampleRateHz: number): Float32Array<ArrayBuffer> =>
  inFolder((folder) => {
    const raw = join(folder, 'sound.f32');
    ffmpeg(['-i', path, ...plainFloats(sampleRateHz), raw]);
    const bytes = readFileSync(raw);
    return new Float32Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length));
  });

/** The coder of a condition: AAC at 64 kb/s or Opus at 24 kb/s, mono, by FFmpeg; decoded again at the recording's own rate. */
export const ffmpegCoder =
  (condition: keyof typeof WAYS): Coder =>
  ({ samples, sampleRateHz }) =>
    inFolder((folder) => {
      const raw = join(folder, 'sound.f32');
      const coded = join(folder, WAYS[condition].file);
      writeFileSync(raw, samples);
      ffmpeg([...plainFloats(sampleRateHz), '-i', raw, ...WAYS[condition].args, coded]);
      return { samples: decodedFile(coded, sampleRateHz), sampleRateHz };
    });
