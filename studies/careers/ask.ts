/** Asks as the journal writes them; the studies keep words of their own, so that they import nothing they judge. */
export const SKILLS = [
  'steady',
  'line',
  'stop',
  'cast-left',
  'cast-right',
  'cast-back',
  'hunt',
  'mark',
  'pickup',
  'delivery',
  'recall',
  'heel',
  'leave',
] as const;
export type Skill = (typeof SKILLS)[number];

export const PULLS = ['none', 'post', 'placed-dummy', 'thrown-dummy', 'shot-and-dummy', 'game'] as const;
export const PLACES = ['between', 'beside', 'apart'] as const;

export interface Ask {
  distanceM?: number;
  wayFraction?: number;
  temptation?: (typeof PULLS)[number];
  handlerPlace?: (typeof PLACES)[number];
  cover?: number;
  distraction?: number;
  turnDeg?: number;
  castM?: number;
  otherDummies?: number;
  gapDeg?: number;
  blind?: boolean;
  waitS?: number;
  obstacle?: number;
  windAcrossMPerS?: number;
}

export type Grade = 'missed' | 'fair' | 'good';

/** An ask with everything filled in at its easy end, words as ranks. */
export interface AskFigures {
  readonly distanceM: number;
  readonly way: number;
  /** 0 nothing .. 5 game. */
  readonly pull: number;
  /** 0 handler between .. 2 apart. */
  readonly apart: number;
  readonly cover: number;
  readonly distraction: number;
  /** Degrees away from the plain hand signal. */
  readonly offDeg: number;
  readonly castM: number;
  readonly others: number;
  /** 0 nothing near the line .. 1 another dummy on it. */
  readonly narrow: number;
  readonly blind: number;
  readonly waitS: number;
  readonly obstacle: number;
  readonly windMPerS: number;
}

/** Reads an ask. `narrow` falls in a straight line to 0 at 70 degrees (our judgement, 2026). */
export function figuresOf(skill: Skill, ask: Ask): AskFigures {
  const plainDeg = skill === 'cast-back' ? 180 : 90;
  const isCast = skill.startsWith('cast');
  return {
    distanceM: Math.max(5, ask.distanceM ?? 5),
    way: Math.max(0.1, ask.wayFraction ?? 0.1),
    pull: PULLS.indexOf(ask.temptation ?? 'none'),
    apart: PLACES.indexOf(ask.handlerPlace ?? 'between'),
    cover: ask.cover ?? 0,
    distraction: ask.distraction ?? 0,
    offDeg: isCast ? Math.abs((ask.turnDeg ?? plainDeg) - plainDeg) : 0,
    castM: Math.max(5, ask.castM ?? 5),
    others: ask.otherDummies ?? 0,
    narrow: Math.max(0, 70 - (ask.gapDeg ?? 180)) / 70,
    blind: ask.blind === true ? 1 : 0,
    waitS: ask.waitS ?? 0,
    obstacle: ask.obstacle ?? 0,
    windMPerS: ask.windAcrossMPerS ?? 0,
  };
}
