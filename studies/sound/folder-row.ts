import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { decodedFile } from './coders.ts';
import type { Detector } from './recording.ts';
import { tableRow } from './run-sets.ts';
import { count, noCounts } from './score.ts';

const SOUND_FILE = /\.(wav|flac|ogg|opus|mp3|m4a|aac)$/i;
const RATE_HZ = 44100;

/** False alarms over the sound files of a folder, and of those within it, which hold neither whistle nor click: whatever is heard there is false. */
export function folderRow(detector: Detector, folder: string): string {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    SOUND_FILE.test(name),
  );
  if (files.length === 0) throw new RangeError(`folder: expected sound files in ${folder}, found none`);
  const counts = noCounts();
  for (const file of files) {
    const samples = decodedFile(join(folder, file), RATE_HZ);
    const heard = detector(samples, RATE_HZ);
    count(counts, { whistles: [], clicks: [] }, heard, samples.length / RATE_HZ, [
      0,
      Number.POSITIVE_INFINITY,
    ]);
  }
  return tableRow(`${files.length} files`, 'nothing', counts);
}
