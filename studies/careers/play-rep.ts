import { figuresOf, type Grade, type Skill } from './ask.ts';
import type { Dice } from './dice.ts';
import { type Exercise, legsAsked, type Variation } from './exercises.ts';
import type { LegTruth, Situation } from './mind.ts';
import type { Handler, Life, Session } from './session.ts';
import type { RepOutcome } from './trainer.ts';

export interface Rep {
  readonly work: Exercise;
  readonly rep: string;
  readonly atMs: number;
  readonly sinceBreak: number;
  readonly windMPerS: number;
  /** The first or the last of its session. */
  readonly opensOrEnds: boolean;
}

const UNSURE_SHARE = 0.06;
const SIDES = ['left', 'right', 'left', 'right', 'back'] as const;

/** Plays one rep: its legs until one is missed. Gives what the trainer takes from it. */
export function playRep(
  life: Life,
  session: Session,
  { work, rep, atMs, sinceBreak, windMPerS, opensOrEnds }: Rep,
): RepOutcome {
  const { mind, dice, handler } = session;
  const withStop = work.legs.includes('stop');
  const clean = work.isSend && (!withStop || dice.chance(handler.clean));
  const vary: Variation = { side: dice.pick(SIDES), stretch: dice.pick([0.85, 1, 1, 1.15]), windMPerS };
  const legs: Record<string, unknown>[] = [];
  let worst: RepOutcome = 'well';
  let stopped = false;
  if (clean) life.expectations.set(rep, mind.expectation());
  for (const { skill, ask } of legsAsked(work, session.trainer.asks(work, opensOrEnds), vary, clean)) {
    const figures = figuresOf(skill, ask);
    const { day, visits, ageMonths } = session;
    const situation: Situation = { skill, figures, day, visits, ageMonths, repsSinceBreak: sinceBreak };
    const truth = mind.chances(situation);
    life.truths.set(`${rep}/${legs.length}`, truth);
    const throwOf = dice.uniform();
    const spoilt = spoiltCause(skill, handler, dice);
    // A spoilt leg was not asked of the dog: how it went says nothing about it, and the dog takes nothing from it.
    const grade: Grade = spoilt === null ? thrown(throwOf, truth) : throwOf < 0.75 ? 'missed' : 'fair';
    legs.push({ skill, ask, grade, ...causeOf(grade, spoilt, dice), ...latencyOf(skill, grade, dice) });
    if (spoilt === null) mind.learns(situation, grade);
    stopped ||= skill === 'stop';
    if (spoilt !== null) worst = 'excused';
    else if (grade === 'missed') worst = 'missed';
    else if (grade === 'fair' && worst === 'well') worst = 'so-so';
    if (grade === 'missed') break;
  }
  if (work.isSend || stopped) mind.sent(stopped);
  const hangsBack = clean && dice.chance(life.expectations.get(rep)?.given ?? 0);
  const shows = hangsBack ? { expectation: dice.pick(['hangs-back', 'stops-unasked']) } : {};
  const body = { rep, session: session.name, legs, ...(work.isSend ? { clean } : {}), ...shows };
  life.writer.write('rep-recorded', atMs, body);
  return worst;
}

function spoiltCause(skill: Skill, handler: Handler, dice: Dice): 'handler' | 'setup' | null {
  if (skill === 'stop' && dice.chance(handler.spoiltStops)) return 'handler';
  if (!dice.chance(handler.spoils)) return null;
  return dice.chance(0.7) ? 'handler' : 'setup';
}

/** The cause as written down: left out for most of the dog's own misses, now and then "unsure". */
function causeOf(grade: Grade, spoilt: 'handler' | 'setup' | null, dice: Dice) {
  if (grade === 'good') return {};
  if (spoilt !== null) return { cause: spoilt };
  if (dice.chance(UNSURE_SHARE)) return { cause: 'unsure' };
  return dice.chance(0.3) ? { cause: 'dog' } : {};
}

function latencyOf(skill: Skill, grade: Grade, dice: Dice) {
  if (skill !== 'stop' || grade === 'missed') return {};
  const medianS = grade === 'good' ? 0.7 : 1.8;
  return { latencyS: Math.round(100 * medianS * Math.exp(0.25 * dice.normal())) / 100 };
}

/** The grade that a throw in 0..1 gives. */
function thrown(throwOf: number, { given }: LegTruth): Grade {
  if (throwOf < given.missed) return 'missed';
  return throwOf < given.missed + given.fair ? 'fair' : 'good';
}
