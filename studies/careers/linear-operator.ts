import type { Skill } from './ask.ts';
import { chancesOf, IDLE_EXPECTATION, type Mechanism, plainTruth, type Situation } from './mind.ts';
import { bySkill, type Trouble, traitsAround, troublesOf } from './traits.ts';

/** Share of the chance that each trouble takes away at its full size (our judgement, 2026). */
const TAKES: Readonly<Record<Trouble, number>> = {
  distance: 0.4,
  way: 0.5,
  pull: 0.6,
  apart: 0.2,
  cover: 0.25,
  distraction: 0.6,
  off: 0.25,
  cast: 0.3,
  others: 0.25,
  narrow: 0.3,
  blind: 0.2,
  wait: 0.25,
  obstacle: 0.4,
  wind: 0.1,
  new: 0.12,
  tired: 0.2,
  young: 0.1,
};

const DISTANCE_EDGES_M = [15, 35, 70];
const cellOf = ({ figures }: Situation) => ({
  far: DISTANCE_EDGES_M.filter((edgeM) => figures.distanceM > edgeM).length,
  drawn: figures.pull <= 1 ? 0 : figures.pull === 2 ? 1 : 2,
});
const FORGETS_IN_DAYS = 150;

interface Strengths {
  lastDay: number;
  /** 4 distances by 3 temptations. */
  readonly cells: number[];
}

/**
 * Linear-operator learning (Bush1955): in each skill and coarse cell of asks a strength p in 0..1; a success moves it by
 * `p += a (1 - p)`, a miss by `p -= b p`, neighbouring cells by less the farther they are; lay-offs let it slip back. Troubles
 * take their share of the chance one after another, so they multiply. No form of the day.
 */
export const linearOperator: Mechanism = (kennel) => {
  const shared = { traits: traitsAround(kennel, 0.15), skills: bySkill(kennel, 0.04) };
  return (dog) => {
    const traits = traitsAround(dog, 0.3, shared.traits);
    const own = bySkill(dog, 0.05);
    const start = 0.95 + 0.03 * dog.normal();
    const rate = {
      win: dog.between(0.05, 0.15),
      lose: dog.between(0.005, 0.03),
      spread: dog.between(0.25, 0.55),
    };
    const tidy = dog.between(0.6, 0.85);
    const skills = new Map<Skill, Strengths>();
    const untaught = (skill: Skill, cell: number) => {
      const p = start + own[skill] + shared.skills[skill] - 0.04 * (Math.floor(cell / 3) + (cell % 3));
      return Math.min(0.96, Math.max(0.4, p));
    };
    const strengths = ({ skill, day }: Situation): Strengths => {
      const known = skills.get(skill);
      if (known === undefined) {
        const made = { lastDay: day, cells: Array.from({ length: 12 }, (_, cell) => untaught(skill, cell)) };
        skills.set(skill, made);
        return made;
      }
      const kept = Math.exp(-Math.max(0, day - known.lastDay) / FORGETS_IN_DAYS);
      known.cells.forEach((p, cell) => {
        known.cells[cell] = untaught(skill, cell) + (p - untaught(skill, cell)) * kept;
      });
      known.lastDay = day;
      return known;
    };
    return {
      wakes() {},
      chances(at) {
        const { far, drawn } = cellOf(at);
        let notMissed = strengths(at).cells[3 * far + drawn]!;
        for (const [trouble, much] of Object.entries(troublesOf(at.figures, at)) as [Trouble, number][])
          notMissed *= Math.max(0.3, 1 - TAKES[trouble] * traits[trouble] * much);
        return plainTruth(chancesOf(notMissed, tidy + (0.97 - tidy) * notMissed ** 2));
      },
      learns(at, grade) {
        const here = cellOf(at);
        const { cells } = strengths(at);
        cells.forEach((p, cell) => {
          const away = Math.abs(Math.floor(cell / 3) - here.far) + Math.abs((cell % 3) - here.drawn);
          const reach = rate.spread ** away;
          if (grade === 'missed') cells[cell] = p - rate.lose * reach * p;
          else cells[cell] = p + rate.win * reach * (grade === 'good' ? 1 : 0.4) * (0.99 - p);
        });
      },
      sent() {},
      expectation: () => ({ given: IDLE_EXPECTATION, unplanted: IDLE_EXPECTATION }),
    };
  };
};
