import {
  ASK_RANGES,
  type Ask,
  type AskField,
  easyAsk,
  HANDLER_PLACES,
  type Skill,
  TEMPTATIONS,
} from '../../ability/index.ts';
import { castSide } from '../picture/laid-leg.ts';

/** Which way a field is moved: `harder` by one ordinary step of the trade, or `easier` by one. */
export type StepWay = 'harder' | 'easier';

/** Casts are worked alike, whichever way the hand sends the dog. */
const RAISED_IN_CASTS: readonly AskField[] = [
  'castM',
  'distanceM',
  'turnDeg',
  'temptation',
  'otherDummies',
  'gapDeg',
  'cover',
  'blind',
  'distraction',
  'obstacle',
];

/**
 * The fields a handler raises or lowers in the work of each skill, most usual first (common practice, no source).
 * Wind and crew are not the handler's to choose.
 */
export const RAISED_FIELDS: Readonly<Record<Skill, readonly AskField[]>> = {
  steady: ['waitS', 'temptation', 'distraction'],
  line: ['distanceM', 'temptation', 'cover', 'distraction', 'otherDummies', 'gapDeg', 'blind', 'obstacle'],
  stop: [
    'wayFraction',
    'distanceM',
    'temptation',
    'handlerPlace',
    'cover',
    'distraction',
    'otherDummies',
    'gapDeg',
  ],
  'cast-left': RAISED_IN_CASTS,
  'cast-right': RAISED_IN_CASTS,
  'cast-back': RAISED_IN_CASTS,
  hunt: ['cover', 'distanceM', 'distraction', 'blind'],
  mark: ['distanceM', 'waitS', 'temptation', 'cover', 'otherDummies', 'gapDeg', 'distraction', 'obstacle'],
  pickup: ['temptation', 'distraction', 'cover', 'otherDummies'],
  delivery: ['distanceM', 'distraction', 'otherDummies'],
  recall: ['distanceM', 'distraction', 'temptation'],
  heel: ['distraction', 'temptation', 'waitS'],
  leave: ['temptation', 'distraction', 'waitS'],
};

/** No step turns a cast farther from its easy way than this (our judgement, 2026). */
const WIDEST_TURN_DEG = 60;

/** No step lays another dummy nearer to the line than this (our judgement, 2026). */
const NARROWEST_GAP_DEG = 15;

/** Distance steps: about a quarter more, whole metres up to 10, then fives (our judgement, 2026). */
function steppedM(lengthM: number, way: StepWay, mostM: number): number {
  const factor = way === 'harder' ? 1.25 : 0.8;
  const grain = lengthM * factor > 12 ? 5 : 1;
  const wanted = Math.round((lengthM * factor) / grain) * grain;
  const moved = way === 'harder' ? Math.max(wanted, lengthM + grain) : Math.min(wanted, lengthM - grain);
  return Math.min(mostM, Math.max(5, moved));
}

function steppedRank<T>(ranks: readonly T[], value: T, way: StepWay): T | null {
  return ranks[ranks.indexOf(value) + (way === 'harder' ? 1 : -1)] ?? null;
}

/**
 * The ask with one field moved one step, or `null` where the field stands at its end. A stop moves along its own
 * line: `wayFraction` takes `distanceM` with it, one thing raised; `distanceM` of a stop moves the whole line.
 * Step sizes: our judgement, 2026.
 */
export function oneStep(ask: Ask, skill: Skill, field: AskField, way: StepWay): Ask | null {
  const easy = easyAsk(skill);
  const up = way === 'harder';
  const settled = (value: number, step: number, least: number, most: number): Ask | null => {
    const moved = Math.min(most, Math.max(least, value + (up ? step : -step)));
    return moved === value ? null : { ...ask, [field]: moved };
  };
  switch (field) {
    case 'distanceM':
    case 'castM': {
      const lengthM = ask[field] ?? easy[field];
      const moved = steppedM(lengthM, way, ASK_RANGES[field][1]);
      return moved === lengthM ? null : { ...ask, [field]: moved };
    }
    case 'wayFraction':
      return laterStop(ask, way);
    case 'temptation': {
      const next = steppedRank(TEMPTATIONS, ask.temptation ?? easy.temptation, way);
      return next === null || next === 'game' ? null : { ...ask, temptation: next };
    }
    case 'handlerPlace': {
      const next = steppedRank(HANDLER_PLACES, ask.handlerPlace ?? easy.handlerPlace, way);
      return next === null ? null : { ...ask, handlerPlace: next };
    }
    case 'blind':
      return (ask.blind ?? false) === up ? null : { ...ask, blind: up };
    case 'gapDeg': {
      const gapDeg = ask.gapDeg ?? easy.gapDeg;
      if ((ask.otherDummies ?? 0) === 0) return null;
      if (up && gapDeg <= NARROWEST_GAP_DEG) return null;
      const moved = up ? Math.max(NARROWEST_GAP_DEG, Math.min(gapDeg, 75) - 15) : Math.min(180, gapDeg + 15);
      return moved === gapDeg ? null : { ...ask, gapDeg: moved };
    }
    case 'turnDeg':
      return turned(ask, skill, up);
    case 'waitS':
      return settled(ask.waitS ?? 0, Math.max(5, Math.round((ask.waitS ?? 0) / 2)), 0, ASK_RANGES.waitS[1]);
    case 'otherDummies': {
      const moved = settled(ask.otherDummies ?? 0, 1, 0, ASK_RANGES.otherDummies[1]);
      return moved === null || moved.otherDummies === 0 ? withoutGap(moved) : moved;
    }
    case 'cover':
    case 'distraction':
    case 'obstacle':
      return settled(ask[field] ?? 0, 1, 0, ASK_RANGES[field][1]);
    default:
      return null;
  }
}

function withoutGap(ask: Ask | null): Ask | null {
  if (ask === null) return null;
  const { gapDeg: _gone, ...rest } = ask;
  return rest;
}

/** Moves a stop by 15 in 100 of the line it comes on; whole metres, tenths of short ways. `null` past its ends. */
function laterStop(ask: Ask, way: StepWay): Ask | null {
  const distanceM = ask.distanceM ?? 5;
  const wayFraction = Math.max(0.1, ask.wayFraction ?? 0.1);
  const lineM = distanceM / wayFraction;
  const moved = Math.round((wayFraction + (way === 'harder' ? 0.15 : -0.15)) * 100) / 100;
  const next = Math.min(0.9, Math.max(0.1, moved));
  if (Math.abs(next - wayFraction) < 1e-9) return null;
  if ((way === 'harder') !== next > wayFraction) return null;
  const stopM = lineM * next;
  if (stopM > ASK_RANGES.distanceM[1]) return null;
  return {
    ...ask,
    wayFraction: next,
    distanceM: stopM >= 10 ? Math.round(stopM) : Math.round(stopM * 10) / 10,
  };
}

/** Side casts turn away from square by 15 degrees towards back; back casts bend from straight on. */
function turned(ask: Ask, skill: Skill, up: boolean): Ask | null {
  const side = castSide(skill);
  if (side === null) return null;
  const easy = easyAsk(skill).turnDeg;
  const now = ask.turnDeg ?? easy;
  const away = Math.abs(now - easy);
  if (up && away >= WIDEST_TURN_DEG) return null;
  const moved = Math.max(0, Math.min(WIDEST_TURN_DEG, away + (up ? 15 : -15)));
  if (moved === away) return null;
  return { ...ask, turnDeg: side === 'back' ? easy - moved : easy + moved };
}
