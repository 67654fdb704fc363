import { GOAL_NAMES, goalsOf } from './goals.ts';
import type { Tongue } from './tongue.ts';
import type { TradeWords } from './trade.ts';
import type { Ask, AskedLeg, Goal, Skill } from './vocabulary.ts';

/** A leg with what it sends the dog to; that of a cast back hangs on the leg before it. */
type LedLeg = AskedLeg & { readonly goal: Goal | null };

function led(legs: readonly AskedLeg[]): readonly LedLeg[] {
  const goals = goalsOf(legs);
  return legs.map((leg, i) => ({ ...leg, goal: goals[i] ?? null }));
}

const toGoal = (goal: Goal | null): string => (goal === null ? '' : ` to the ${GOAL_NAMES[goal]}`);
/** A blind that a post marks is no blind out in the open. */
const toMarkedGoal = (goal: Goal | null, ask: Ask): string =>
  `${toGoal(goal)}${goal === 'blind' && ask.temptation === 'post' ? ' at the post' : ''}`;
const sideOf = (skill: Skill): string =>
  skill === 'cast-left' ? 'left' : skill === 'cast-right' ? 'right' : 'back';
const isCast = (skill: Skill): boolean => skill.startsWith('cast-');
/** Pick-up and delivery go without saying where something else is asked. */
function told(legs: readonly AskedLeg[]): readonly LedLeg[] {
  const all = led(legs);
  const out = all.filter(({ skill }) => skill !== 'pickup' && skill !== 'delivery');
  return out.length > 0 ? out : all;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Asks in words: one leg with its figures, a whole rep as a sentence. */
export function askWords(t: Tongue, trade: TradeWords) {
  const over = (lengthM: number | undefined, before = ' '): string =>
    lengthM === undefined ? '' : `${before}${t.length(lengthM)}`;
  const steadiness = (ask: Ask): string => {
    const wait = ask.waitS === undefined ? '' : ` for ${t.number(ask.waitS)} s`;
    const draw =
      ask.temptation === undefined || ask.temptation === 'none'
        ? ''
        : ` to ${trade.temptation(ask.temptation)}`;
    return `steady${draw}${wait}`;
  };

  /** One leg in small letters: "stop at 18 m", "left 14 m to the blind". */
  const phrase = ({ skill, ask, goal }: LedLeg): string => {
    switch (skill) {
      case 'steady':
        return steadiness(ask);
      case 'line':
        return `line${toMarkedGoal(goal, ask)}${over(ask.distanceM, goal === null ? ' of ' : ', ')}`;
      case 'stop':
        return `stop${over(ask.distanceM, ' at ')}`;
      case 'cast-left':
      case 'cast-right':
      case 'cast-back':
        return `${sideOf(skill)}${over(ask.castM)}${toMarkedGoal(goal, ask)}`;
      case 'hunt':
        return `hunt an area${over(ask.distanceM, ' at ')}`;
      case 'mark':
        return `mark${over(ask.distanceM, ' at ')}${ask.temptation === 'shot-and-dummy' ? ', with a shot' : ''}`;
      case 'pickup':
        return 'pick up';
      case 'delivery':
        return 'to hand';
      case 'recall':
        return `recall${over(ask.distanceM, ' from ')}`;
      case 'heel':
        return `walk to heel${over(ask.distanceM, ' for ')}`;
      case 'leave':
        return `leave ${ask.temptation && ask.temptation !== 'none' ? trade.temptation(ask.temptation) : 'it'}`;
    }
  };

  /** The same without figures, as a link of a whole rep's sentence. */
  const link = ({ skill, ask, goal }: LedLeg): string => {
    if (skill === 'line') return `line${goal === null ? ' out' : toGoal(goal)}`;
    if (isCast(skill)) return `${sideOf(skill)}${toGoal(goal)}`;
    return phrase({ skill, ask: { temptation: ask.temptation }, goal });
  };

  return {
    /** One leg with its figures: "Stop at 18 m". */
    leg: (leg: AskedLeg): string => capital(led([leg]).map(phrase).join('')),
    /** Some legs with their figures: "Stop at 18 m, then left 14 m to the blind". */
    legs: (legs: readonly AskedLeg[]): string => capital(told(legs).map(phrase).join(', then ')),
    /** A whole rep in a sentence: "Line to the memory, stop, left to the blind." Pick-up and delivery go without saying. */
    rep: (legs: readonly AskedLeg[]): string => {
      const links = told(legs).map((leg, i) =>
        i === 0 && isCast(leg.skill) ? `${link(leg)} from a sit` : link(leg),
      );
      return links.length > 0 ? `${capital(links.join(', '))}.` : 'Nothing asked yet.';
    },
    /** Short name of an ask for a table: "18 m, half-way out, knee-high". */
    figures: (skill: Skill, ask: Ask): string => {
      const parts: string[] = [];
      const lengthM = isCast(skill) ? (ask.castM ?? ask.distanceM) : ask.distanceM;
      if (lengthM !== undefined) parts.push(t.length(lengthM));
      if (ask.wayFraction !== undefined && skill === 'stop') parts.push(wayOut(ask.wayFraction));
      if (ask.waitS) parts.push(`${t.number(ask.waitS)} s wait`);
      if (ask.temptation && ask.temptation !== 'none') parts.push(trade.temptation(ask.temptation));
      if (ask.blind) parts.push('unseen');
      if (ask.cover && ask.cover >= 0.5) parts.push(trade.cover(ask.cover));
      if (ask.obstacle && ask.obstacle >= 0.5) parts.push(trade.obstacle(ask.obstacle));
      if (ask.otherDummies)
        parts.push(`${t.count(ask.otherDummies, `other ${t.dummy}`, `other ${t.dummies}`)} out`);
      if (ask.distraction && ask.distraction >= 0.5) parts.push(trade.distraction(ask.distraction));
      return parts.length > 0 ? parts.join(', ') : 'the easy end';
    },
    wayOut,
  };
}

/** How far along the send, in words: thirds and the middle. */
function wayOut(wayFraction: number): string {
  if (wayFraction < 0.4) return 'early on the line';
  return wayFraction <= 0.6 ? 'half-way out' : 'late on the line';
}

export type AskWords = ReturnType<typeof askWords>;
