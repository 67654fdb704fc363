import type { Fact } from '@sedgeline/journal';
import { FIRST_DAY_MS, type Outing, outings } from './calendar.ts';
import { type Dice, diceOf } from './dice.ts';
import { type FactLog, factLog } from './fact-log.ts';
import { DOGS, GOALS, GROUNDS, HANDLERS } from './kennel-cast.ts';
import { askAt, type Work } from './ladder.ts';
import { drawLayout, layoutName, layoutSize } from './layouts.ts';
import { playSession } from './session-play.ts';
import { newTrainee, type Trainee } from './trainee.ts';

const SENDS: readonly Work[] = ['line', 'stop', 'cast'];

/** How far the dog is sent these days: the drawing of the day must hold it. */
const farthestM = ({ ladder }: Trainee): number =>
  Math.max(...SENDS.map((work) => askAt(work, ladder.rungOf(work)).distanceM ?? 5));

function writeKennel(log: FactLog): void {
  let atMs = FIRST_DAY_MS + 8 * 3_600_000;
  const next = () => {
    atMs += 1000;
    return atMs;
  };
  for (const { added } of HANDLERS) log.write('handler-added', added, next());
  for (const { added } of DOGS) log.write('dog-added', added, next());
  for (const { added } of GROUNDS) log.write('ground-added', added, next());
}

/** The drawing a session is held on, written when it is first used. */
function layoutFor(outing: Outing, trainee: Trainee, drawn: Set<string>, log: FactLog, dice: Dice): string {
  const size = layoutSize(farthestM(trainee));
  const layout = layoutName(outing.ground, size);
  if (!drawn.has(layout)) {
    drawn.add(layout);
    log.write(
      'layout-drawn',
      drawLayout(outing.ground, size, outing.weather, dice),
      outing.startMs - 600_000,
    );
  }
  return layout;
}

/**
 * The record of an invented kennel: three dogs over eight months (21 March to 21 November 2026), some 100 sessions and
 * 2,000 to 3,000 legs, in time order, each fact's clock later than the one's before. A careful young bitch who is good at
 * home first, a keen dog that comes to expect the whistle until it is let run clean more often, and an old hand. All of it
 * is made up, and the record says so. Pure: the same seed gives the same bytes on every machine. Throws RangeError unless
 * the seed is a whole number from 0 to 2^53 - 1.
 */
export function demoKennel(seed: number): Fact[] {
  const dice = diceOf(seed);
  const log = factLog(seed);
  const trainees = new Map(DOGS.map((dog, number) => [dog.added.dog, newTrainee(dog, seed, number)]));
  const drawn = new Set<string>();
  const goals = GOALS.map((goal) => ({ ...goal, atMs: Date.parse(goal.onDate) + 7 * 3_600_000 }));
  let reps = 0;
  let lastStartMs = FIRST_DAY_MS;
  writeKennel(log);
  for (const [number, outing] of outings(dice).entries()) {
    for (const { body, atMs } of goals) {
      if (atMs >= lastStartMs && atMs < outing.startMs) log.write('goal-set', body, atMs);
    }
    lastStartMs = outing.startMs;
    const trainee = trainees.get(outing.dog.added.dog);
    if (trainee === undefined)
      throw new RangeError(`dog: expected one of the kennel's, got ${outing.dog.added.dog}`);
    const layout = layoutFor(outing, trainee, drawn, log, dice);
    const session = `demo-${seed}-session-${String(number + 1).padStart(3, '0')}`;
    const nextRep = () => {
      reps += 1;
      return `demo-${seed}-rep-${String(reps).padStart(4, '0')}`;
    };
    playSession(trainee, outing, { session, layout, nextRep }, log, dice);
  }
  return [...log.facts];
}
