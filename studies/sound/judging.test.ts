import { describe, expect, it } from 'vitest';
import type { Detector, Recording } from './recording.ts';
import { ridgeAndRules } from './ridge-and-rules.ts';
import { judgeCondition } from './run-sets.ts';
import { missedAims } from './wanted.ts';
import { allPips, echoesToo, lateBy40Ms } from './wrong-detectors.ts';

/** What the truth itself would hear: the aims are within reach. */
const truthItself =
  ({ truth }: Recording): Detector =>
  () =>
    truth;

const missedInField = (detectorFor: (recording: Recording) => Detector) =>
  missedAims('field', judgeCondition(detectorFor, 'tune', 'field', 1));

describe('the aims', () => {
  it('are met by the truth', () => {
    expect(missedInField(truthItself)).toEqual([]);
  });

  it('are missed by a detector 40 ms late, and by its onsets alone', () => {
    // 40 ms is within the 50 ms that pair, so every count is right: only the times can tell.
    expect(missedInField(lateBy40Ms)).toEqual(['onsetMedianS', 'onsetP95S']);
  });

  it('are missed by one that takes echoes and releases for more', () => {
    expect(missedInField(echoesToo)).toEqual(
      expect.arrayContaining(['whistleF', 'clickF', 'falseWhistlesPerHour', 'falseClicksPerHour']),
    );
  });

  it('are missed by one that calls everything a pip, and by the kind alone', () => {
    expect(missedInField(allPips)).toEqual(['whistleKindF']);
  });

  it('are missed by silence', () => {
    const silence = () => () => ({ whistles: [], clicks: [] });
    expect(missedInField(silence)).toEqual(expect.arrayContaining(['whistleF', 'clickF', 'onsetMedianS']));
  });
});

it('a made fair day can be heard by plain thresholds', () => {
  const { whistles } = judgeCondition(() => ridgeAndRules, 'tune', 'fair', 1);
  // Half is far below what they find: this asks only that made blasts can be heard at all.
  expect(whistles.found / whistles.truth).toBeGreaterThan(0.5);
});
