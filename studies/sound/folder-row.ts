import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { decodedFile } from './coders.ts';
import { REAL_SOUNDS } from './real-sounds.ts';
import type { Detector } from './recording.ts';
import { tableRow } from './run-sets.ts';
import { count, noCounts } from './score.ts';

const SOUND_FILE = /\.(wav|flac|ogg|opus|mp3|m4a|aac)$/i;
const RATE_HZ = 44100;

const filesIn = (folder: string) => readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort();

/** False alarms over sound files that hold neither whistle nor click: whatever is heard there is false. */
function filesRow(detector: Detector, name: string, folder: string, files: readonly string[]): string {
  if (files.length === 0) throw new RangeError(`${name}: expected sound files in ${folder}, found none`);
  const counts = noCounts();
  for (const file of files) {
    const samples = decodedFile(join(folder, file), RATE_HZ);
    const heard = detector(samples, RATE_HZ);
    count(counts, { whistles: [], clicks: [] }, heard, samples.length / RATE_HZ, [
      0,
      Number.POSITIVE_INFINITY,
    ]);
  }
  return tableRow(`${name}, ${files.length} files`, 'nothing', counts);
}

/** One row over the sound files of a folder, and of those within it. */
export const folderRow = (detector: Detector, folder: string): string =>
  filesRow(
    detector,
    'folder',
    folder,
    filesIn(folder).filter((name) => SOUND_FILE.test(name)),
  );

/** A row for each package of really recorded sounds, unpacked into one folder. */
export function packageRows(detector: Detector, folder: string): string[] {
  const all = filesIn(folder);
  return REAL_SOUNDS.map(({ name, files }) =>
    filesRow(
      detector,
      name,
      folder,
      all.filter((file) => files.test(file)),
    ),
  );
}
