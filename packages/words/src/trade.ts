import type { Tongue } from './tongue.ts';
import type {
  Cause,
  Expectation,
  Grade,
  HandlerPlace,
  Purpose,
  Reward,
  Skill,
  Temptation,
} from './vocabulary.ts';

/** Names of the skills: short for the pad's keys, long for headings and tables. */
const SKILL_NAMES: Readonly<Record<Skill, { readonly short: string; readonly long: string }>> = {
  steady: { short: 'Steady', long: 'Steadiness' },
  line: { short: 'Line', long: 'Line out' },
  stop: { short: 'Stop', long: 'Stop on the whistle' },
  'cast-left': { short: 'Left', long: 'Cast to the left' },
  'cast-right': { short: 'Right', long: 'Cast to the right' },
  'cast-back': { short: 'Back', long: 'Cast back' },
  hunt: { short: 'Hunt', long: 'Hunting an area' },
  mark: { short: 'Mark', long: 'Marking' },
  pickup: { short: 'Pick up', long: 'Pick-up' },
  delivery: { short: 'To hand', long: 'Delivery to hand' },
  recall: { short: 'Recall', long: 'Recall' },
  heel: { short: 'Heel', long: 'Walking to heel' },
  leave: { short: 'Leave', long: 'Leaving it' },
};

type GradeWords = Readonly<Record<Grade, { readonly short: string; readonly long: string }>>;

const same = (word: string) => ({ short: word, long: word });

const CAST_GRADES: GradeWords = {
  good: same('took it'),
  fair: { short: 'drifted, two', long: 'drifted, or a second signal' },
  missed: same('refused'),
};

/** What good, fair and missed look like at each skill (common practice, no source). */
const GRADE_WORDS: Readonly<Record<Skill, GradeWords>> = {
  steady: { good: same('steady'), fair: same('shuffled'), missed: same('broke') },
  line: {
    good: same('straight'),
    fair: same('drifted'),
    missed: { short: 'wrong, no go', long: 'wrong line, or would not go' },
  },
  stop: {
    good: same('prompt'),
    fair: { short: 'slow, or two', long: 'slow, or a second whistle' },
    missed: same('ran on'),
  },
  'cast-left': CAST_GRADES,
  'cast-right': CAST_GRADES,
  'cast-back': CAST_GRADES,
  hunt: {
    good: { short: 'held, found', long: 'held the area and found' },
    fair: { short: 'pulled off', long: 'pulled off once, or slow' },
    missed: { short: 'gave up', long: 'left the area, or gave up' },
  },
  mark: {
    good: same('straight to it'),
    fair: { short: 'hunted', long: 'hunted for it' },
    missed: { short: 'lost or helped', long: 'lost it, or was helped' },
  },
  pickup: {
    good: { short: 'clean', long: 'clean pick-up' },
    fair: { short: 'fumbled', long: 'fumbled, or put it down once' },
    missed: { short: 'left it', long: 'would not pick up' },
  },
  delivery: {
    good: same('to hand'),
    fair: { short: 'slow, mouthed', long: 'slow, or mouthed it' },
    missed: same('dropped'),
  },
  recall: {
    good: same('straight in'),
    fair: { short: 'slow, or two', long: 'slow, or a second call' },
    missed: same('did not come'),
  },
  heel: {
    good: same('close'),
    fair: { short: 'ahead, behind', long: 'ahead or behind, put right by a word' },
    missed: { short: 'left heel', long: 'left heel, or pulled' },
  },
  leave: {
    good: same('left it'),
    fair: { short: 'looked, or two', long: 'went to look, or a second word' },
    missed: same('took it'),
  },
};

const CAUSE_NAMES: Readonly<Record<Cause, { readonly name: string; readonly hint: string }>> = {
  dog: { name: 'The dog', hint: 'knew what was asked and did not do it' },
  handler: { name: 'Me', hint: 'late, unclear, or asked too much' },
  setup: { name: 'The set-up', hint: 'something got in the way, or kit failed' },
  unsure: { name: 'Not sure', hint: 'counts half against the dog' },
};

/** What the handler's own mistake usually is at each skill (common practice, no source). */
const HANDLER_HINTS: Readonly<Partial<Record<Skill, string>>> = {
  steady: 'sent before steady, or asked too much',
  line: 'poor set-up of the line',
  stop: 'late or unclear whistle',
  'cast-left': 'unclear signal',
  'cast-right': 'unclear signal',
  'cast-back': 'unclear signal',
  recall: 'late or unclear whistle',
};

const PLACES: Readonly<Record<HandlerPlace, string>> = {
  between: 'between the dog and it',
  beside: "at the dog's side",
  apart: 'away from both',
};

const PURPOSES: Readonly<Record<Purpose, string>> = {
  check: 'check',
  build: 'build',
  vary: 'vary',
  clean: 'straight through',
  easier: 'easier',
  finish: 'finish',
};

const EXPECTATIONS: Readonly<Record<Expectation, string>> = {
  none: 'went on hard',
  'hangs-back': 'hung back',
  'stops-unasked': 'stopped unasked',
};

const REWARDS: Readonly<Record<Reward, string>> = {
  marker: 'marker',
  food: 'food',
  play: 'play',
  retrieve: 'retrieve',
  praise: 'praise',
};

const COVERS = ['bare or mown', 'ankle-high', 'knee-high', 'over her back'] as const;
const DISTRACTIONS = [
  'nobody about',
  'one quiet person or dog',
  'a working group',
  'shot, game or play close by',
] as const;
const OBSTACLES = ['nothing in the way', 'a ditch or strip', 'a fence or jump', 'water to cross'] as const;

/** The nearest named step of a 0 to 3 scale; fractions go to the nearer name. */
function onScale(names: readonly [string, string, string, string], value: number): string {
  const step = Math.min(3, Math.max(0, Math.round(Number.isFinite(value) ? value : 0)));
  return names[step] ?? names[0];
}

/** The trade's own words: skills, grades, causes, temptations, cover, where the handler stands. */
export function tradeWords(t: Tongue) {
  const temptations: Readonly<Record<Temptation, string>> = {
    none: 'nothing',
    post: 'a post',
    'placed-dummy': `a placed ${t.dummy}`,
    'thrown-dummy': `a thrown ${t.dummy}`,
    'shot-and-dummy': `a shot and a ${t.dummy}`,
    game: 'game',
  };
  const grades: Readonly<Record<Grade, string>> = { good: 'good', fair: 'fair', missed: 'missed' };
  return {
    dummy: t.dummy,
    dummies: t.dummies,
    /** Short name of a skill, for a key: "Left". */
    skill: (skill: Skill): string => SKILL_NAMES[skill].short,
    /** Long name of a skill, for a heading: "Cast to the left". */
    skillInWords: (skill: Skill): string => SKILL_NAMES[skill].long,
    grade: (grade: Grade): string => grades[grade],
    /** What this grade looks like at this skill, in full: "slow, or a second whistle". */
    gradeAt: (skill: Skill, grade: Grade): string => GRADE_WORDS[skill][grade].long,
    /** The same for a key: "slow, or two". */
    gradeOnKey: (skill: Skill, grade: Grade): string => GRADE_WORDS[skill][grade].short,
    cause: (cause: Cause): string => CAUSE_NAMES[cause].name,
    causeHint: (cause: Cause, skill: Skill): string =>
      (cause === 'handler' ? HANDLER_HINTS[skill] : undefined) ?? CAUSE_NAMES[cause].hint,
    temptation: (temptation: Temptation): string => temptations[temptation],
    handlerPlace: (place: HandlerPlace): string => PLACES[place],
    cover: (cover: number): string => onScale(COVERS, cover),
    distraction: (distraction: number): string => onScale(DISTRACTIONS, distraction),
    obstacle: (obstacle: number): string => onScale(OBSTACLES, obstacle),
    purpose: (purpose: Purpose): string => PURPOSES[purpose],
    expectation: (expectation: Expectation): string => EXPECTATIONS[expectation],
    reward: (reward: Reward): string => REWARDS[reward],
  };
}

export type TradeWords = ReturnType<typeof tradeWords>;
