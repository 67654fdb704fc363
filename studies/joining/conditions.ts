/** What a set of made sessions is like. Shares and rates are our judgement, 2026: nobody has counted them. */
export interface Conditions {
  readonly name: string;
  /** How far the beginning of the sound may be off, seconds; `null`: nothing is known of it. */
  readonly startWithinS: number | null;
  /** Share of the reps that were worked and never tapped. */
  readonly unrecorded: number;
  /** Share of the blasts that the ear loses, and blasts an hour that were none. */
  readonly lost: number;
  readonly falsePerHour: number;
  /** Other handlers at work within hearing, and the chance that one blows the same make of whistle. */
  readonly others: number;
  readonly sameWhistle: number;
  /** The sound may begin after the first reps and end before the last. */
  readonly isPartial: boolean;
  /** Share of the joinable legs that are to be joined surely. */
  readonly wantedSure: number;
}

/** Four kinds of day, from the phone that listens beside its own taps to a class on one field. */
export const CONDITIONS: readonly Conditions[] = [
  {
    name: 'live',
    startWithinS: 2,
    unrecorded: 0.05,
    lost: 0.05,
    falsePerHour: 6,
    others: 0,
    sameWhistle: 0,
    isPartial: false,
    wantedSure: 0.7,
  },
  {
    name: 'film',
    startWithinS: 600,
    unrecorded: 0.08,
    lost: 0.08,
    falsePerHour: 10,
    others: 0,
    sameWhistle: 0,
    isPartial: true,
    wantedSure: 0.5,
  },
  {
    name: 'no date',
    startWithinS: null,
    unrecorded: 0.08,
    lost: 0.08,
    falsePerHour: 10,
    others: 0,
    sameWhistle: 0,
    isPartial: true,
    wantedSure: 0.4,
  },
  {
    name: 'class',
    startWithinS: 120,
    unrecorded: 0.15,
    lost: 0.12,
    falsePerHour: 20,
    others: 2,
    sameWhistle: 0.4,
    isPartial: true,
    wantedSure: 0.15,
  },
];

/** Of the joins said to be sure, so many may be wrong: over all sets, and in any one of them. */
export const MOST_WRONG = { overall: 0.005, inOneSet: 0.01 } as const;
