import type { Dice } from './dice.ts';
import { EXERCISES, type Exercise } from './exercises.ts';
import { playRep } from './play-rep.ts';
import type { Life, Session } from './session.ts';

const MINUTE_MS = 60_000;
const REPS_BEFORE_BREAK = 6;

/** Plays one session: reps with now and then a break, and writes them down. */
export function playSession(life: Life, session: Session): void {
  const { mind, trainer, dice, name, dog, ground, startMs, handler } = session;
  mind.wakes(session.day);
  life.writer.write('session-opened', startMs, { session: name, dog, ground });
  let atMs = startMs;
  let sinceBreak = 0;
  let work: Exercise | null = null;
  const windMPerS = Math.round(dice.between(0, 6));
  for (let n = 0; n < session.reps; n++) {
    if (sinceBreak >= REPS_BEFORE_BREAK && dice.chance(handler.breaks)) {
      atMs += MINUTE_MS;
      life.writer.write('break-taken', atMs, { session: name, minutes: 3 });
      atMs += 3 * MINUTE_MS;
      sinceBreak = 0;
    }
    atMs += Math.round(dice.between(50, 110)) * 1000;
    work = work !== null && dice.chance(handler.repeats) ? work : chosen(session.number, dice);
    const opensOrEnds = n === 0 || n === session.reps - 1;
    const outcome = playRep(life, session, {
      work,
      rep: `${name}-r${n}`,
      atMs,
      sinceBreak,
      windMPerS,
      opensOrEnds,
    });
    trainer.notes(work, outcome);
    sinceBreak += 1;
  }
  life.writer.write('session-closed', atMs + MINUTE_MS, { session: name });
}

/** An exercise this far on, by its weight. */
function chosen(sessionNumber: number, dice: Dice): Exercise {
  const open = EXERCISES.filter(({ fromSession }) => fromSession <= sessionNumber);
  let left = dice.uniform() * open.reduce((sum, { weight }) => sum + weight, 0);
  for (const one of open) {
    left -= one.weight;
    if (left < 0) return one;
  }
  return open[0]!;
}
