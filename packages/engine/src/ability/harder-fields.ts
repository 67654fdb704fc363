import { type Ask, HANDLER_PLACES, type Skill, TEMPTATIONS } from './ask.ts';
import { easyAsk } from './ask-range.ts';

export type AskField = keyof Ask;

const FIELDS = Object.keys(easyAsk('stop')) as AskField[];
/** Lengths of two lines within a tenth count as the same line (our judgement, 2026: way is noted in tenths). */
const SAME_LINE = 0.1;

/** How hard a field stands, larger harder; only differences within one field mean anything. */
function hardness(field: AskField, ask: Ask, skill: Skill): number {
  const easy = easyAsk(skill);
  switch (field) {
    case 'temptation':
      return TEMPTATIONS.indexOf(ask.temptation ?? easy.temptation);
    case 'handlerPlace':
      return HANDLER_PLACES.indexOf(ask.handlerPlace ?? easy.handlerPlace);
    case 'blind':
      return ask.blind === true ? 1 : 0;
    case 'gapDeg':
      return -(ask.gapDeg ?? easy.gapDeg);
    case 'turnDeg':
      return Math.abs((ask.turnDeg ?? easy.turnDeg) - easy.turnDeg);
    case 'distanceM':
    case 'castM':
    case 'wayFraction':
      // Below the easy end nothing gets easier (the demand table is flat there).
      return Math.max(ask[field] ?? easy[field], easy[field]);
    default:
      return ask[field] ?? easy[field];
  }
}

/** Length of the send on which a stop or cast comes, in metres. */
function lineLengthM(ask: Ask, skill: Skill): number {
  const easy = easyAsk(skill);
  return (ask.distanceM ?? easy.distanceM) / Math.max(ask.wayFraction ?? easy.wayFraction, easy.wayFraction);
}

/**
 * Fields of the ask that are harder `now` than `then`, grouped into things raised: absent fields stand at
 * their easy end; a later stop (or cast) on the same line moves `distanceM` and `wayFraction` together, and
 * that is one thing. Fields that turn nothing (`turnDeg` outside casts) are left out.
 */
export function harderFields(now: Ask, then: Ask, skill: Skill): readonly (readonly AskField[])[] {
  const isCast = skill.startsWith('cast-');
  const harder = FIELDS.filter(
    (field) =>
      now[field] !== then[field] &&
      (field !== 'turnDeg' || isCast) &&
      hardness(field, now, skill) > hardness(field, then, skill) + 1e-9,
  );
  const both = harder.includes('distanceM') && harder.includes('wayFraction');
  if (!both || !(skill === 'stop' || isCast)) return harder.map((field) => [field]);
  const ratio = lineLengthM(now, skill) / lineLengthM(then, skill);
  if (!(Math.abs(Math.log(ratio)) <= SAME_LINE)) return harder.map((field) => [field]);
  const rest = harder.filter((field) => field !== 'distanceM' && field !== 'wayFraction');
  return [['distanceM', 'wayFraction'], ...rest.map((field) => [field] as const)];
}
