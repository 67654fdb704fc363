import type { Tongue } from './tongue.ts';

/** Every pattern that is looked for over months, in the order in which they are told. */
export const PATTERN_CODES = [
  'expects-the-whistle',
  'one-sided',
  'only-at-home',
  'distance-wall',
  'tires-late',
  'late-whistle',
  'too-big-steps',
] as const;
export type PatternCode = (typeof PATTERN_CODES)[number];

/** Legs of one kind and the share among them that is told of. */
export interface PatternEvidence {
  readonly of: string;
  readonly legs: number;
  readonly share: number;
}

/** A pattern with its figures. */
export interface FoundPattern {
  readonly pattern: PatternCode;
  readonly state: 'looks-like' | 'may-be' | 'nothing' | 'cant-say';
  readonly evidence: readonly PatternEvidence[];
  readonly at?: { readonly distanceM: number } | undefined;
  readonly weaker?: 'left' | 'right' | undefined;
  readonly tooLittle?: { readonly of: string; readonly have: number; readonly need: number } | undefined;
}

const TITLES: Readonly<Record<PatternCode, string>> = {
  'expects-the-whistle': 'Waiting for the whistle',
  'one-sided': 'One side harder than the other',
  'only-at-home': 'New ground',
  'distance-wall': 'A distance past which it goes wrong',
  'tires-late': 'Late in the session',
  'late-whistle': 'Your whistle',
  'too-big-steps': 'Size of the steps',
};

/** What follows: about the work, never about the dog's character. */
const MEANINGS: Readonly<Record<PatternCode, string>> = {
  'expects-the-whistle': 'More sends straight through would help.',
  'one-sided': 'Ask that side easier, and as often as the other.',
  'only-at-home': 'Take a step down on new ground, and work on more grounds.',
  'distance-wall': 'Get it sure just short of there, then go on by small steps.',
  'tires-late': 'Take the break earlier, or keep the session shorter.',
  'late-whistle': 'Decide earlier, and blow before the dog is where it is to stop.',
  'too-big-steps': 'Raise one thing at a time.',
};

const isHidden = (share: number) => share > 0 && share < 0.025;

/** A share as people say it: "3 in 10", "1 in 20", "none"; never a false "none" or "all". */
function often(share: number): string {
  if (share === 0) return 'none';
  if (share === 1) return 'all';
  if (isHidden(share)) return 'fewer than 1 in 20';
  if (share < 0.075) return '1 in 20';
  if (share > 0.95) return 'nearly all';
  return `${Math.min(9, Math.max(1, Math.round(share * 10)))} in 10`;
}

/** Patterns as sentences with their figures. */
export function patternWords(t: Tongue) {
  const figures = ({ evidence }: FoundPattern, of: string): PatternEvidence =>
    evidence.find((one) => one.of === of) ?? { of, legs: 0, share: 0 };
  const legs = (n: number, one = 'leg', many = 'legs') => t.count(n, one, many);
  /** "missed 3 in 10 to the left (41 casts) and 1 in 10 to the right (38 casts)". */
  const two = (
    found: FoundPattern,
    verb: string,
    [first, second]: readonly [readonly [string, string], readonly [string, string]],
    [one, many]: readonly [string, string] = ['leg', 'legs'],
  ): string => {
    const [a, b] = [figures(found, first[0]), figures(found, second[0])];
    return `${verb} ${often(a.share)} ${first[1]} (${legs(a.legs, one, many)}) and ${often(b.share)} ${second[1]} (${legs(b.legs, one, many)})`;
  };
  const counts: Readonly<Record<PatternCode, (found: FoundPattern) => string>> = {
    'expects-the-whistle': (found) =>
      two(
        found,
        'hung back or stopped unasked on',
        [
          ['after-stops', 'straight through after mostly stops'],
          ['after-clean', 'after mostly none'],
        ],
        ['send', 'sends'],
      ),
    'one-sided': (found) => {
      const sides = [
        ['left', 'to the left'],
        ['right', 'to the right'],
      ] as const;
      const [first, second] = found.weaker === 'right' ? [sides[1], sides[0]] : sides;
      return two(found, 'missed', [first, second], ['cast', 'casts']);
    },
    'only-at-home': (found) =>
      two(found, 'missed', [
        ['new-ground', 'on the first two visits to a ground'],
        ['known-ground', 'later'],
      ]),
    'distance-wall': (found) => {
      const where = found.at === undefined ? 'that distance' : t.length(found.at.distanceM);
      return two(found, 'missed', [
        ['past-wall', `beyond ${where}`],
        ['short-of-wall', 'nearer'],
      ]);
    },
    'tires-late': (found) =>
      two(found, 'missed', [
        ['late', 'from the tenth rep without a break'],
        ['fresh', 'before that'],
      ]),
    'late-whistle': (found) => {
      const { legs: n, share } = figures(found, 'stops');
      return `${often(share)} of ${legs(n, 'stop', 'stops')} you blew late or put down to yourself`;
    },
    'too-big-steps': (found) => {
      const { legs: n, share } = figures(found, 'steps');
      const missed = two(found, 'missed', [
        ['big-steps', 'of those'],
        ['smaller-steps', 'of the smaller ones'],
      ]);
      return `${often(share)} of ${legs(n, 'step up', 'steps up')} asked far more than had gone well; ${missed}`;
    },
  };
  const claims: Readonly<Record<PatternCode, (found: FoundPattern) => string>> = {
    'expects-the-whistle': () => 'the dog waits for the whistle',
    'one-sided': ({ weaker }) => `casts to the ${weaker ?? 'left'} are the harder ones at like asks`,
    'only-at-home': () => 'new ground costs more than it usually does',
    'distance-wall': ({ at }) =>
      `something gives way ${at === undefined ? 'at a distance' : `at about ${t.length(at.distanceM)}`}`,
    'tires-late': () => 'it goes worse late, before a break',
    'late-whistle': () => 'the whistle often comes late',
    'too-big-steps': () => 'the steps are often too big',
  };
  const lacking: Readonly<Record<string, readonly [string, string]>> = {
    'clean-sends': ['send straight through', 'sends straight through'],
    left: ['cast to the left', 'casts to the left'],
    right: ['cast to the right', 'casts to the right'],
    'new-ground': ['leg on new ground', 'legs on new ground'],
    'known-ground': ['leg on ground that is known', 'legs on ground that is known'],
    late: ['leg past the ninth rep without a break', 'legs past the ninth rep without a break'],
    fresh: ['leg before that', 'legs before that'],
    stops: ['stop', 'stops'],
    steps: ['step up', 'steps up'],
    'far-legs': ['leg at a distance', 'legs at a distance'],
  };
  const thin = ({ tooLittle }: FoundPattern): string => {
    if (tooLittle === undefined) return 'Can’t say yet.';
    if (tooLittle.of === 'far-legs')
      return `Can’t say yet: a wall met by fewer than ${tooLittle.need} legs can’t be found.`;
    const [one, many] = lacking[tooLittle.of] ?? ['leg', 'legs'];
    return `Can’t say yet: ${t.count(tooLittle.have, one, many)}, ${tooLittle.need} are needed.`;
  };
  const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
  return {
    title: (pattern: PatternCode): string => TITLES[pattern],
    meaning: (pattern: PatternCode): string => MEANINGS[pattern],
    heading: 'Over the months',
    /** The one line where nothing is to be told. */
    nothing: (n: number): string => `Nothing stands out in ${legs(n)}.`,
    /** One pattern with its figures: "Looks as if casts to the left are the harder ones: missed 3 in 10 to the left …" */
    sentence: (found: FoundPattern): string => {
      const { pattern, state } = found;
      if (state === 'cant-say') return thin(found);
      const counted = counts[pattern](found);
      if (state === 'nothing') return `Nothing stands out: ${counted}.`;
      const lead = state === 'looks-like' ? 'Looks as if' : 'It may be that';
      return capital(`${lead} ${claims[pattern](found)}: ${counted}. ${MEANINGS[pattern]}`);
    },
  };
}

export type PatternWords = ReturnType<typeof patternWords>;
