import { type Ask, TEMPTATIONS } from '../../ability/index.ts';

/**
 * What a ground and its company have to offer, the most of each on its scale: these a handler finds, or needs others for, and cannot
 * put out. What goes beyond is not proposed; a handler may ask it all the same.
 */
export interface AtHand {
  readonly cover: number;
  readonly obstacle: number;
  readonly distraction: number;
  /** Shot and game: how far beyond what a dummy thrown by hand draws; 0 for neither. */
  readonly beyondThrown: number;
}

const THROWN = TEMPTATIONS.indexOf('thrown-dummy');

function wantedBy(ask: Ask): AtHand {
  const { cover = 0, obstacle = 0, distraction = 0, temptation = 'none' } = ask;
  return {
    cover,
    obstacle,
    distraction,
    beyondThrown: Math.max(0, TEMPTATIONS.indexOf(temptation) - THROWN),
  };
}

const KINDS = ['cover', 'obstacle', 'distraction', 'beyondThrown'] as const;

/** Whether all that an ask wants of the ground and of company is there; `null` is a ground of which nothing is known. */
export function isAtHand(atHand: AtHand | null, ask: Ask): boolean {
  if (atHand === null) return true;
  const wanted = wantedBy(ask);
  return KINDS.every((kind) => wanted[kind] <= atHand[kind]);
}

/** The most of each that any of them offers; nothing of all that for none. */
export function mostAtHand(found: Iterable<AtHand>): AtHand {
  const most = { cover: 0, obstacle: 0, distraction: 0, beyondThrown: 0 };
  for (const one of found) for (const kind of KINDS) most[kind] = Math.max(most[kind], one[kind]);
  return most;
}

/** The most of what asks want of the ground and of company. */
export function atHandFor(asks: readonly Ask[]): AtHand {
  return mostAtHand(asks.map(wantedBy));
}
