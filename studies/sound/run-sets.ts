import type { Coder } from './coders.ts';
import { makeRecording } from './make-recording.ts';
import type { Detector, Recording, Truth } from './recording.ts';
import { type Counts, count, figures, noCounts } from './score.ts';
import { type Condition, judgedSnrDb, type SetName, sceneOf } from './sets.ts';
import { AIMS, missedAims } from './wanted.ts';

/** Counts of a detector over some recordings of one condition; the detector may be made for the recording, as the wrong ones are. `askedOf` may
 * put blasts out of the judged ratios. */
export function judgeCondition(
  detectorFor: (recording: Recording) => Detector,
  set: SetName,
  condition: Condition,
  recordings: number,
  coder: Coder | null = null,
  askedOf: (truth: Truth) => Truth = (truth) => truth,
): Counts {
  const counts = noCounts();
  for (let index = 0; index < recordings; index++) {
    const made = makeRecording(sceneOf(set, condition, index));
    const recording = coder === null ? made : { ...made, ...coder(made) };
    const heard = detectorFor(recording)(recording.samples, recording.sampleRateHz);
    const lastsS = recording.samples.length / recording.sampleRateHz;
    count(counts, askedOf(recording.truth), heard, lastsS, judgedSnrDb(condition, index));
  }
  return counts;
}

const share = (value: number | null) => (value === null ? 'none' : value.toFixed(3));
const ms = (valueS: number | null) => (valueS === null ? 'none' : (1000 * valueS).toFixed(1));

/** Head of the table, in markdown. */
export const TABLE_HEAD = [
  '| recordings | min | blasts | F | F kind | false/h | onset median, p95, ms | end median, ms | clicks | F | false/h | not asked | misses |',
  '| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |',
].join('\n');

/** One row: what was counted, the figures, and which aims were missed (a condition without aims is reported only). */
export function tableRow(name: string, condition: Condition, counts: Counts): string {
  const { whistles, clicks, lastsS, ungraded } = counts;
  const found = figures(counts);
  const missed = missedAims(condition, counts);
  const verdict = Object.keys(AIMS[condition]).length === 0 ? 'no aim' : missed.join(', ') || 'nothing';
  return `| ${[
    name,
    (lastsS / 60).toFixed(1),
    whistles.truth,
    share(found.whistleF),
    share(found.whistleKindF),
    found.falseWhistlesPerHour.toFixed(0),
    `${ms(found.onsetMedianS)}, ${ms(found.onsetP95S)}`,
    ms(found.endMedianS),
    clicks.truth,
    share(found.clickF),
    found.falseClicksPerHour.toFixed(0),
    ungraded,
    verdict,
  ].join(' | ')} |`;
}
