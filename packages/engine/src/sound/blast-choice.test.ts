import { describe, expect, it } from 'vitest';
import { createBlastChoice, surestReadings } from './blast-choice.ts';
import { candidateAt } from './candidate.fixture.ts';

const judged = (startS: number, endS: number, logOdds: number, wholeLogOdds = 0) => ({
  ...candidateAt(startS, endS),
  logOdds,
  wholeLogOdds,
});
const placesOf = (all: readonly { startS: number; endS: number }[]) =>
  all.map(({ startS, endS }) => `${startS} to ${endS}`);
const scores = (logOdds: number) => ({ score: () => logOdds, wholeScore: () => 0 });

describe('the choice of blasts', () => {
  it('takes the surest reading of each sound, in order of time', () => {
    const whole = judged(1, 2, 3, 1);
    const pieces = [judged(1, 1.4, 2), judged(1.5, 2, 1)];
    const later = judged(3, 3.2, 0.5);
    expect(surestReadings([later, ...pieces, whole], [], 0)).toEqual([whole, later]);
    // Where the first piece is the likelier whole, both pieces stand.
    expect(surestReadings([...pieces, { ...whole, wholeLogOdds: -1 }], [], 0)).toEqual(pieces);
  });

  it('says where a blast ends by what is likeliest whole, however sure the others are that it begins', () => {
    const ways = [judged(1, 2, 1, -1), judged(1, 1.8, 0.5, 2), judged(1.01, 2.1, 3, -2)];
    expect(placesOf(surestReadings(ways, [], 0))).toEqual(['1 to 1.8']);
    // And that reading alone tells whether it is one.
    expect(surestReadings(ways, [], 0.6)).toEqual([]);
  });

  it('says no sound twice, however late its other reading comes', () => {
    const choose = createBlastChoice(scores(2), null, 0);
    const [first, second] = [candidateAt(1, 1.4), candidateAt(1.1, 2)];
    expect(choose([first], [first])).toHaveLength(1);
    expect(choose([second], [first, second])).toEqual([]);
  });

  it('says what has log odds over the least, and no other', () => {
    const one = candidateAt(1, 1.4);
    expect(createBlastChoice(scores(0.4), null, 0.5)([one], [one])).toEqual([]);
    expect(createBlastChoice(scores(0.6), null, 0.5)([one], [one])).toMatchObject([
      { startS: 1, endS: 1.4, logOdds: 0.6 },
    ]);
  });
});
