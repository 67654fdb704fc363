import type { Ask, SkillName } from '@sedgeline/journal';
import { type Dice, rounded } from './dice.ts';
import type { DemoGround } from './kennel-cast.ts';
import { askAt, type Work } from './ladder.ts';

/** A leg that the handler means to ask. */
export interface AskedLeg {
  readonly skill: SkillName;
  readonly ask: Ask;
}

/** A rep as the handler means it: its chain of legs, and what line of work it belongs to. */
export interface Exercise {
  readonly work: Work;
  readonly legs: readonly AskedLeg[];
  /** Sends only: whether the dog is let run through. */
  readonly clean?: boolean;
}

/** What shapes the asks of a rep beside its rung. */
export interface Setting {
  readonly ground: DemoGround;
  readonly windMPerS: number;
  readonly dice: Dice;
}

/** An ask on this very ground: distances as they came out, the cover and the bustle that are there, the wind of the day. */
function onGround(ask: Ask, work: Work, { ground, windMPerS, dice }: Setting): Ask {
  const distanceM =
    ask.distanceM === undefined ? {} : { distanceM: rounded(ask.distanceM * dice.between(0.9, 1.1)) };
  const cover = Math.max(ask.cover ?? 0, work === 'recall' || work === 'heel' ? 0 : ground.cover);
  const distraction = Math.max(ask.distraction ?? 0, dice.chance(0.5) ? ground.distraction : 0);
  const acrossMPerS = rounded(windMPerS * dice.unit());
  return {
    ...ask,
    ...distanceM,
    ...(cover > 0 ? { cover } : {}),
    ...(distraction > 0 ? { distraction } : {}),
    ...(work === 'line' && acrossMPerS > 1 ? { windAcrossMPerS: acrossMPerS } : {}),
  };
}

const home = (distanceM: number, dice: Dice): readonly AskedLeg[] => [
  ...(dice.chance(0.45) ? [{ skill: 'pickup', ask: {} } as const] : []),
  { skill: 'delivery', ask: { distanceM: rounded(distanceM) } },
];
const waited = (share: number, dice: Dice): readonly AskedLeg[] =>
  dice.chance(share) ? [{ skill: 'steady', ask: { waitS: dice.pick([5, 10, 15]) } }] : [];

/** A cast of the stopped or sat-out dog; back on some, else the side that is asked for. */
export function castLeg(side: 'left' | 'right' | 'back', ask: Ask, dice: Dice): AskedLeg {
  const turnDeg = side === 'back' ? dice.pick([180, 180, 170, 160]) : dice.pick([90, 90, 80, 100, 110]);
  return { skill: `cast-${side}`, ask: { ...ask, turnDeg } };
}

/** A send that is stopped on the way, most often with a cast after it; the line to it is one the dog knows. */
export function stoppedSend(
  rung: number,
  lineRung: number,
  side: 'left' | 'right' | 'back',
  setting: Setting,
): Exercise {
  const { dice } = setting;
  const stop = onGround(askAt('stop', rung), 'stop', setting);
  const stopM = stop.distanceM ?? 5;
  const sendM = rounded(stopM / (stop.wayFraction ?? 0.5));
  const line = onGround({ ...askAt('line', Math.min(lineRung, rung)), distanceM: sendM }, 'line', setting);
  const cast = onGround({ ...askAt('cast', Math.max(0, rung - 2)), distanceM: stopM }, 'cast', setting);
  const legs: AskedLeg[] = [...waited(0.2, dice), { skill: 'line', ask: line }, { skill: 'stop', ask: stop }];
  if (dice.chance(0.6))
    legs.push(castLeg(side, { ...cast, wayFraction: stop.wayFraction ?? 0.5 }, dice), ...home(sendM, dice));
  return { work: 'stop', legs, clean: false };
}

/** A send that is let run through. */
export function cleanSend(rung: number, setting: Setting): Exercise {
  const ask = onGround(askAt('line', rung), 'line', setting);
  const legs = [
    ...waited(0.2, setting.dice),
    { skill: 'line', ask } as const,
    ...home(ask.distanceM ?? 5, setting.dice),
  ];
  return { work: 'line', legs, clean: true };
}

/** A cast of a dog that sits out in the field. */
export function satOutCast(rung: number, side: 'left' | 'right' | 'back', setting: Setting): Exercise {
  const ask = onGround(askAt('cast', rung), 'cast', setting);
  const legs = [
    castLeg(side, ask, setting.dice),
    ...home((ask.distanceM ?? 5) + (ask.castM ?? 5) / 2, setting.dice),
  ];
  return { work: 'cast', legs };
}

/** A mark: steady to the fall, then straight to it and home. */
export function markRep(rung: number, setting: Setting): Exercise {
  const { waitS = 5, ...ask } = onGround(askAt('mark', rung), 'mark', setting);
  const steady = { skill: 'steady', ask: { waitS, temptation: 'thrown-dummy' } } as const;
  const legs = [steady, { skill: 'mark', ask } as const, ...home(ask.distanceM ?? 5, setting.dice)];
  return { work: 'mark', legs, clean: true };
}

/** A hunt in cover at the end of an easy line. */
export function huntRep(rung: number, setting: Setting): Exercise {
  const ask = onGround(askAt('hunt', rung), 'hunt', setting);
  return {
    work: 'hunt',
    legs: [{ skill: 'hunt', ask }, ...home(ask.distanceM ?? 5, setting.dice)],
    clean: true,
  };
}

/** Coming home, and walking to heel past something worth having. */
export function plainRep(work: 'recall' | 'heel', rung: number, setting: Setting): Exercise {
  const ask = onGround(askAt(work, rung), work, setting);
  const leave = work === 'heel' && ask.temptation !== undefined && ask.temptation !== 'none';
  const legs: AskedLeg[] = [{ skill: work, ask }];
  if (leave && setting.dice.chance(0.5))
    legs.push({ skill: 'leave', ask: { temptation: ask.temptation ?? 'none' } });
  return { work, legs };
}
