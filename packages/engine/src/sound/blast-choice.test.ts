import { describe, expect, it } from 'vitest';
import { createBlastChoice, surestReadings } from './blast-choice.ts';
import { candidateAt } from './candidate.fixture.ts';

const judged = (startS: number, endS: number, logOdds: number) => ({ ...candidateAt(startS, endS), logOdds });

describe('the choice of blasts', () => {
  it('takes the surest reading of each sound, in order of time', () => {
    const whole = judged(1, 2, 3);
    const pieces = [judged(1, 1.4, 2), judged(1.5, 2, 1)];
    const later = judged(3, 3.2, 0.5);
    expect(surestReadings([later, ...pieces, whole], [])).toEqual([whole, later]);
    // Where the whole is less sure, both of its pieces stand.
    expect(surestReadings([...pieces, { ...whole, logOdds: 0.1 }], [])).toEqual(pieces);
  });

  it('says no sound twice, however late its other reading comes', () => {
    const choose = createBlastChoice(() => 2, null, 0);
    const [first, second] = [candidateAt(1, 1.4), candidateAt(1.1, 2)];
    expect(choose([first], [first])).toHaveLength(1);
    expect(choose([second], [first, second])).toEqual([]);
  });

  it('says what has log odds over the least, and no other', () => {
    const one = candidateAt(1, 1.4);
    expect(createBlastChoice(() => 0.4, null, 0.5)([one], [one])).toEqual([]);
    expect(createBlastChoice(() => 0.6, null, 0.5)([one], [one])).toEqual([{ ...one, logOdds: 0.6 }]);
  });
});
