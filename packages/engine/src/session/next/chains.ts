import type { Ask, Skill } from '../../ability/index.ts';
import { castSide, type LaidLeg } from '../picture/laid-leg.ts';

/** The chain a skill is usually worked in (common practice, no source), before the record says otherwise. */
const USUAL_CHAINS: Readonly<Record<Skill, readonly Skill[]>> = {
  steady: ['steady'],
  line: ['line', 'pickup', 'delivery'],
  stop: ['line', 'stop'],
  'cast-left': ['cast-left', 'pickup', 'delivery'],
  'cast-right': ['cast-right', 'pickup', 'delivery'],
  'cast-back': ['cast-back', 'pickup', 'delivery'],
  hunt: ['hunt', 'pickup', 'delivery'],
  mark: ['mark', 'pickup', 'delivery'],
  pickup: ['pickup', 'delivery'],
  delivery: ['pickup', 'delivery'],
  recall: ['recall'],
  heel: ['heel'],
  leave: ['leave'],
};

/**
 * The chain for a skill that has never gone well: every leg at the easy end, the only fair ask (contract). The easy
 * distance is written out, so that the card has something to draw.
 */
export function easyChain(skill: Skill): LaidLeg[] {
  return USUAL_CHAINS[skill].map((part) => ({ skill: part, ask: easyEnd(part) }));
}

/** The easy end of the part of the way run (contract). */
const EASY_WAY = 0.1;

function easyEnd(skill: Skill): Ask {
  const near = { distanceM: 5 };
  if (skill === 'stop') return { ...near, wayFraction: EASY_WAY };
  if (castSide(skill) !== null) return { ...near, castM: 5 };
  return skill === 'line' || skill === 'mark' || skill === 'hunt' || skill === 'recall' ? near : {};
}

/** Legs of a chain that follow one that ended early, taken from the usual chain. */
export function completedChain(done: readonly LaidLeg[], focus: Skill): LaidLeg[] {
  const last = done.at(-1)?.skill;
  const rest = USUAL_CHAINS[focus];
  const from = last === undefined ? -1 : rest.indexOf(last);
  if (from < 0) return [...done];
  return [...done, ...rest.slice(from + 1).map((part) => ({ skill: part, ask: easyEnd(part) }))];
}

/** The leg a chain is about: the session's focus if it is in it, else its stop, its cast, or its first leg. */
export function focusOf(legs: readonly LaidLeg[], focus: Skill | null): number {
  const wanted: readonly (Skill | null)[] = [focus, 'stop', 'cast-left', 'cast-right', 'cast-back'];
  for (const skill of wanted) {
    const place = legs.findIndex((leg) => leg.skill === skill);
    if (place >= 0) return place;
  }
  return 0;
}

/** As near as a part of the way in hundredths gives a line back (our judgement, 2026). */
const SAME_LINE = 0.06;

const isSend = (skill: Skill) => skill === 'line' || skill === 'mark' || skill === 'hunt';

/** A send that the dog is let finish: a way out with no stop in it (contract: `clean: true`). */
export function isCleanSend(legs: readonly LaidLeg[]): boolean {
  return legs.some((leg) => isSend(leg.skill)) && !legs.some((leg) => leg.skill === 'stop');
}

/** The same send straight through: the stop and what hangs on it left out, picked up and brought home. */
export function straightThrough(legs: readonly LaidLeg[]): LaidLeg[] | null {
  const send = legs.find((leg) => isSend(leg.skill));
  const stop = legs.find((leg) => leg.skill === 'stop');
  if (!send || !stop) return null;
  const home = (['pickup', 'delivery'] as const).map(
    (skill) => legs.find((leg) => leg.skill === skill) ?? { skill, ask: {} },
  );
  return [send, ...home];
}

/** From this part of the way on a stop at the end of its line is just that (our judgement, 2026). */
const AT_LINES_END = 0.95;

/**
 * Whether the line is asked as far as the stop and no farther, as at the easy end: the dog is sent, and stopped before it has come to
 * anything; the part of the way is that of the send it expects.
 */
export function isLineToStop(legs: readonly LaidLeg[]): boolean {
  const line = legs.find(({ skill }) => skill === 'line')?.ask;
  const stop = legs.find(({ skill }) => skill === 'stop')?.ask;
  if (line?.distanceM === undefined || stop === undefined) return false;
  return line.distanceM === stop.distanceM && (stop.wayFraction ?? EASY_WAY) < AT_LINES_END;
}

/**
 * The chain with one leg's ask replaced and the legs that hang on it kept in one piece: a stop lies on its line, a cast
 * begins at the stop. A line that is asked as far as the stop goes on being so.
 */
export function relinked(legs: readonly LaidLeg[], changed: number, ask: Ask): LaidLeg[] {
  const next = legs.map((leg, n) => (n === changed ? { ...leg, ask } : leg));
  const skill = legs[changed]?.skill;
  const line = next.findIndex((leg) => leg.skill === 'line');
  const stop = next.findIndex((leg) => leg.skill === 'stop');
  const cast = next.findIndex((leg) => castSide(leg.skill) !== null);
  if (stop < 0 || skill === undefined) return next;
  const put = (n: number, fields: Ask) => {
    const leg = next[n];
    if (leg) next[n] = { ...leg, ask: { ...leg.ask, ...fields } };
  };
  const { distanceM } = ask;
  const movesAll = skill === 'stop' || skill === 'line' || castSide(skill) !== null;
  if (movesAll && distanceM !== undefined && isLineToStop(legs)) {
    put(line, { distanceM });
    put(stop, { distanceM });
  } else if (castSide(skill) !== null && distanceM !== undefined) {
    const lineM = next[line]?.ask.distanceM ?? distanceM;
    put(stop, { distanceM: Math.min(distanceM, lineM), wayFraction: fraction(distanceM, lineM) });
  } else if (skill === 'stop' && line >= 0 && distanceM !== undefined) {
    const lineM = sameLineM(
      next[line]?.ask.distanceM,
      Math.max(distanceM, Math.round(distanceM / Math.max(EASY_WAY, ask.wayFraction ?? EASY_WAY))),
    );
    put(line, { distanceM: lineM });
    put(stop, { wayFraction: fraction(distanceM, lineM) });
  } else if (skill === 'line' && distanceM !== undefined) {
    const stopM = Math.min(next[stop]?.ask.distanceM ?? 5, distanceM);
    put(stop, { distanceM: stopM, wayFraction: fraction(stopM, distanceM) });
  }
  const stopAsk = next[stop]?.ask;
  if (cast >= 0 && skill !== next[cast]?.skill && stopAsk?.distanceM !== undefined) {
    put(cast, {
      distanceM: stopAsk.distanceM,
      ...(stopAsk.wayFraction === undefined ? {} : { wayFraction: stopAsk.wayFraction }),
    });
  }
  return next;
}

/** Parts of the way are noted in hundredths and stops in metres: a line that comes out a little off is the line it was. */
const sameLineM = (wasM: number | undefined, nowM: number) =>
  wasM !== undefined && Math.abs(nowM - wasM) <= SAME_LINE * wasM ? wasM : nowM;

const fraction = (partM: number, wholeM: number) =>
  Math.min(1, Math.max(0, Math.round((partM / Math.max(wholeM, 1e-9)) * 100) / 100));
