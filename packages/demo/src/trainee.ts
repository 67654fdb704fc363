import { type Dice, diceOf } from './dice.ts';
import { type DogMind, dogMind } from './dog-mind.ts';
import {
  cleanSend,
  type Exercise,
  huntRep,
  markRep,
  plainRep,
  type Setting,
  satOutCast,
  stoppedSend,
} from './exercises.ts';
import { type DemoDog, type DemoGround, type DemoHandler, HANDLERS } from './kennel-cast.ts';
import { type Ladder, ladderFrom, type Work } from './ladder.ts';

/** One dog of the kennel on its way through the months: its mind, and where its handler stands with it. */
export interface Trainee {
  readonly dog: DemoDog;
  readonly handler: DemoHandler;
  readonly mind: DogMind;
  readonly ladder: Ladder;
  readonly sessionsOn: Map<string, number>;
  lastDayMs: number | null;
  leftCasts: number;
  rightCasts: number;
}

/** A dog before its first session. Each dog has dice of its own, so that one's days do not shift another's. */
export function newTrainee(dog: DemoDog, seed: number, number: number): Trainee {
  const handler = HANDLERS.find(({ added }) => added.handler === dog.handler);
  if (handler === undefined)
    throw new RangeError(`handler: expected one of the kennel's, got ${dog.handler}`);
  return {
    dog,
    handler,
    mind: dogMind(dog.temperament, diceOf((seed + 7919 * (number + 1)) % Number.MAX_SAFE_INTEGER)),
    ladder: ladderFrom(dog.startRung, dog.topRung),
    sessionsOn: new Map(),
    lastDayMs: null,
    leftCasts: 0,
    rightCasts: 0,
  };
}

/** Rungs that a handler takes off on ground the dog has hardly seen (common practice, no source). */
export function newGroundStep({ sessionsOn }: Trainee, ground: DemoGround): number {
  const earlier = sessionsOn.get(ground.added.ground) ?? 0;
  return earlier === 0 ? 2 : earlier === 1 ? 1 : 0;
}

/** The side of the next cast: back on a third, else the one that has had fewer. */
function nextSide(trainee: Trainee, dice: Dice): 'left' | 'right' | 'back' {
  if (dice.chance(0.3)) return 'back';
  const { leftCasts, rightCasts } = trainee;
  const side =
    leftCasts === rightCasts
      ? dice.pick(['left', 'right'] as const)
      : leftCasts < rightCasts
        ? 'left'
        : 'right';
  if (side === 'left') trainee.leftCasts += 1;
  else trainee.rightCasts += 1;
  return side;
}

/** What the handler asks next: `ease` rungs below where the dog stands, `known` for a rep that begins or ends a session. */
export function nextExercise(
  trainee: Trainee,
  { known, ease, week }: { readonly known: boolean; readonly ease: number; readonly week: number },
  setting: Setting,
): Exercise {
  const { dog, ladder } = trainee;
  const { dice } = setting;
  const rung = (work: Work) =>
    Math.max(0, ladder.rungOf(work) - ease - (known ? 2 : 0) - (dice.chance(0.25) ? 1 : 0));
  const what = known ? dice.pick(['send', 'mark', 'recall'] as const) : dice.pick(dog.works);
  if (what === 'mark') return markRep(rung('mark'), setting);
  if (what === 'hunt') return huntRep(rung('hunt'), setting);
  if (what === 'cast') return satOutCast(rung('cast'), nextSide(trainee, dice), setting);
  if (what === 'recall' || what === 'heel') return plainRep(what, rung(what), setting);
  if (known || dice.chance(dog.cleanShare(week))) return cleanSend(rung('line'), setting);
  return stoppedSend(rung('stop'), rung('line'), nextSide(trainee, dice), setting);
}
