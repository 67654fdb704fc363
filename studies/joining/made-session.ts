import { type Dice, diceNamed } from '../careers/dice.ts';
import type { Conditions } from './conditions.ts';
import type { BlastSeen, RepSeen, SessionSeen } from './joiner.ts';
import { blastsOf, heardBy, type TrueBlast } from './made-whistle.ts';

/** A made session: what can be seen of it, and which blasts were blown for which leg. */
export interface MadeSession {
  readonly seen: SessionSeen;
  /** For each leg that had a whistle: the starts of those of its blasts that the ear has, none where it lost them all. */
  readonly truth: ReadonlyMap<string, readonly number[]>;
}

export const legKey = (rep: string, leg: number): string => `${rep} ${leg}`;

/** How this handler works: what he blows for, and when he gets to his phone. */
interface Habits {
  readonly pitchHz: number;
  /** He pips the dog home in this share of the reps. */
  readonly pipsHome: number;
  readonly tapsEachLeg: boolean;
  /** Share of the reps that are tapped only together with the next. */
  readonly together: number;
  readonly tapS: readonly [number, number];
  readonly betweenS: readonly [number, number];
}

function habitsOf(dice: Dice): Habits {
  const quickS = dice.between(1, 4);
  const betweenS = dice.between(20, 60);
  return {
    pitchHz: dice.between(2300, 4600),
    pipsHome: dice.pick([0, 0.4, 0.95]),
    tapsEachLeg: dice.chance(0.5),
    together: dice.pick([0, 0.05, 0.15]),
    tapS: [quickS, quickS + dice.between(2, 12)],
    betweenS: [betweenS, betweenS + dice.between(10, 60)],
  };
}

/** One rep as it went, from the send on; times in true seconds. */
interface Worked {
  readonly rep: string;
  readonly legs: RepSeen['legs'][number][];
  readonly blasts: TrueBlast[];
  readonly endS: number;
}

const gradeOf = (dice: Dice) => (dice.chance(0.72) ? 'good' : dice.chance(0.7) ? 'fair' : 'missed');

/** Works a rep: the dog runs at 5 to 8 m/s, is stopped on the way or not, picks up and comes home, or is called in. */
function workRep(rep: string, sentS: number, habits: Habits, dice: Dice): Worked {
  const legs: RepSeen['legs'][number][] = [];
  const blasts: TrueBlast[] = [];
  const speed = dice.between(5, 8);
  const outM = dice.between(20, 90);
  let atS = sentS;
  const leg = (skill: RepSeen['legs'][number]['skill'], grade: 'good' | 'fair' | 'missed') => {
    legs.push({ skill, grade, tappedAtS: atS });
    return legs.length - 1;
  };
  const blow = (skill: 'stop' | 'recall', grade: 'good' | 'fair' | 'missed', n: number) => {
    for (const blast of blastsOf(skill, grade, habits.pitchHz, atS, dice)) {
      blasts.push({ ...blast, of: legKey(rep, n) });
      atS = Math.max(atS, blast.endS);
    }
  };
  const isRecall = dice.chance(0.2);
  const isClean = !isRecall && dice.chance(0.35);
  if (isRecall) {
    const grade = gradeOf(dice);
    blow('recall', grade, 0);
    atS += outM / speed + dice.between(1, 4);
    leg('recall', grade);
    return { rep, legs, blasts, endS: atS };
  }
  const stopM = outM * dice.between(0.3, 0.95);
  atS += (isClean ? outM : stopM) / speed;
  leg('line', gradeOf(dice));
  if (!isClean) {
    const grade = gradeOf(dice);
    blow('stop', grade, legs.length);
    atS += dice.between(1, 3);
    leg('stop', grade);
    if (grade === 'missed') return { rep, legs, blasts, endS: atS + outM / speed };
    atS += dice.between(2, 8);
    leg('cast-back', gradeOf(dice));
  }
  atS += dice.between(2, 20);
  leg('pickup', 'good');
  // Pips for the way home stand in no leg: they are the handler's, and belong to nothing that was tapped.
  if (dice.chance(habits.pipsHome))
    blasts.push(...blastsOf('recall', 'good', habits.pitchHz, atS + 0.5, dice));
  atS += outM / speed + dice.between(1, 5);
  leg('delivery', gradeOf(dice));
  return { rep, legs, blasts, endS: atS };
}

/** When the legs were tapped, by a thumb that has something else to do: skewed, late, and now and then with the next rep. */
function tapped(worked: Worked, habits: Habits, dice: Dice): RepSeen {
  const late = () => {
    const [low, high] = habits.tapS;
    const slow = dice.chance(0.06) ? dice.between(10, 60) : 0;
    return low + (high - low) * dice.uniform() ** 2 + slow;
  };
  let lastS = 0;
  const atEndS = worked.endS + late();
  const legs = worked.legs.map((leg) => {
    lastS = Math.max(lastS + 0.4, habits.tapsEachLeg ? leg.tappedAtS + late() : atEndS);
    return { ...leg, tappedAtS: lastS };
  });
  return { rep: worked.rep, legs };
}

/** Other handlers on the field, each at an exercise of his own. */
function otherBlasts(conditions: Conditions, pitchHz: number, untilS: number, dice: Dice): TrueBlast[] {
  const all: TrueBlast[] = [];
  for (let other = 0; other < conditions.others; other++) {
    const ownHz = dice.chance(conditions.sameWhistle) ? pitchHz : dice.between(2300, 4600);
    const everyS = dice.between(50, 140);
    for (let atS = dice.between(0, everyS); atS < untilS; atS += everyS * dice.between(0.5, 1.5)) {
      const skill = dice.chance(0.7) ? 'stop' : 'recall';
      all.push(...blastsOf(skill, gradeOf(dice), ownHz, atS, dice));
    }
  }
  return all;
}

/** Makes a session from a name. No code and no law of chance is shared with what joins. */
export function madeSession(conditions: Conditions, name: string): MadeSession {
  const dice = diceNamed(`joining ${conditions.name} ${name}`);
  const habits = habitsOf(dice);
  const blasts: TrueBlast[] = [];
  const reps: RepSeen[] = [];
  let nowS = 1000;
  const count = 8 + dice.below(10);
  for (let n = 0; n < count; n++) {
    nowS += dice.between(...habits.betweenS) + (n === Math.floor(count / 2) ? dice.between(60, 240) : 0);
    const worked = workRep(`r${n}`, nowS, habits, dice);
    nowS = worked.endS;
    blasts.push(...worked.blasts);
    // Between reps: brought to heel, shown to somebody, blown clear of spit.
    if (dice.chance(0.12))
      blasts.push(...blastsOf(dice.pick(['stop', 'recall']), 'good', habits.pitchHz, nowS + 5, dice));
    if (!dice.chance(conditions.unrecorded)) reps.push(tapped(worked, habits, dice));
  }
  const late = reps.map((rep, n) => {
    const next = reps[n + 1];
    if (next === undefined || !dice.chance(habits.together)) return rep;
    const shift = Math.max(0, (next.legs[0]?.tappedAtS ?? 0) - 4 - (rep.legs.at(-1)?.tappedAtS ?? 0));
    return { ...rep, legs: rep.legs.map((leg) => ({ ...leg, tappedAtS: leg.tappedAtS + shift })) };
  });
  blasts.push(...otherBlasts(conditions, habits.pitchHz, nowS + 60, dice));
  const fromS =
    conditions.isPartial && dice.chance(0.5) ? dice.between(1000, 1300) : 1000 - dice.between(0, 200);
  const toS =
    conditions.isPartial && dice.chance(0.5) ? nowS - dice.between(0, 300) : nowS + dice.between(5, 200);
  return heard(conditions, blasts, late, fromS, Math.max(toS, fromS + 120), dice);
}

/** What a recorder with a clock of its own keeps of it, and what an ear finds in that. */
function heard(
  conditions: Conditions,
  blasts: readonly TrueBlast[],
  reps: readonly RepSeen[],
  fromS: number,
  toS: number,
  dice: Dice,
): MadeSession {
  const drift = 1 + 1e-6 * dice.between(-150, 150);
  const whistles: BlastSeen[] = [];
  const truth = new Map<string, number[]>();
  for (const blast of blasts) if (blast.of !== null) truth.set(blast.of, truth.get(blast.of) ?? []);
  for (const blast of blasts) {
    if (blast.startS < fromS || blast.endS > toS) continue;
    const found = heardBy(conditions.lost, blast, dice);
    if (found === null) continue;
    const startS = (found.startS - fromS) * drift;
    whistles.push({ ...found, startS, endS: (found.endS - fromS) * drift });
    if (blast.of !== null) truth.get(blast.of)?.push(startS);
  }
  const lengthS = (toS - fromS) * drift;
  const falseOnes = Math.round((lengthS / 3600) * conditions.falsePerHour * dice.between(0, 2));
  for (let n = 0; n < falseOnes; n++) {
    const startS = dice.between(0, lengthS - 1);
    const isLong = dice.chance(0.4);
    const endS = startS + (isLong ? dice.between(0.36, 0.9) : dice.between(0.08, 0.3));
    whistles.push({ startS, endS, kind: isLong ? 'long' : 'pip', pitchHz: dice.between(1800, 6000) });
  }
  whistles.sort((a, b) => a.startS - b.startS);
  const { startWithinS } = conditions;
  const starts =
    startWithinS === null
      ? null
      : { atS: fromS + dice.between(-startWithinS, startWithinS), withinS: startWithinS };
  return { seen: { reps, whistles, starts, lengthS }, truth };
}
