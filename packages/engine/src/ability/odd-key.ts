import { type Ask, SKILLS, type Skill, TEMPTATIONS } from './ask.ts';

/**
 * Name of an exact ask at a skill, for what is odd about that very ask: every field in a fixed order, those
 * at their easy end left out, so that absent and easy are the same ask.
 */
export function oddKey(skill: Skill, ask: Ask): string {
  // Built for every leg of every replay, so short: a letter for the skill and for each field.
  let key = LETTERS.charAt(SKILLS.indexOf(skill));
  const turnEasy = skill === 'cast-back' ? 180 : 90;
  if (ask.distanceM !== undefined && ask.distanceM > 5) key += `d${ask.distanceM}`;
  if (ask.wayFraction !== undefined && ask.wayFraction > 0.1) key += `w${ask.wayFraction}`;
  if (ask.temptation !== undefined && ask.temptation !== 'none')
    key += `t${TEMPTATIONS.indexOf(ask.temptation)}`;
  if (ask.handlerPlace !== undefined && ask.handlerPlace !== 'between')
    key += `h${ask.handlerPlace.charAt(0)}`;
  if (ask.cover) key += `c${ask.cover}`;
  if (ask.distraction) key += `x${ask.distraction}`;
  if (ask.turnDeg !== undefined && ask.turnDeg !== turnEasy) key += `a${ask.turnDeg}`;
  if (ask.castM !== undefined && ask.castM > 5) key += `k${ask.castM}`;
  if (ask.otherDummies) key += `o${ask.otherDummies}`;
  if (ask.gapDeg !== undefined && ask.gapDeg < 180) key += `g${ask.gapDeg}`;
  if (ask.blind === true) key += 'u';
  if (ask.waitS) key += `s${ask.waitS}`;
  if (ask.obstacle) key += `r${ask.obstacle}`;
  if (ask.windAcrossMPerS) key += `v${ask.windAcrossMPerS}`;
  if (ask.crew) key += `n${ask.crew}`;
  return key;
}

const LETTERS = 'ABCDEFGHIJKLM';
