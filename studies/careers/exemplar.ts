import type { Skill } from './ask.ts';
import { chancesOf, IDLE_EXPECTATION, type Mechanism, plainTruth, type Situation } from './mind.ts';
import { bySkill, type Traits, type Trouble, traitsAround, troublesOf } from './traits.ts';

/** Where a leg lies in the space the dog remembers in: a full trouble is so many steps (our judgement, 2026). */
const STEPS: Readonly<Record<Trouble, number>> = {
  distance: 2.2,
  way: 1.4,
  pull: 2.2,
  apart: 1,
  cover: 1.2,
  distraction: 1.8,
  off: 1.2,
  cast: 1.5,
  others: 1.2,
  narrow: 1.5,
  blind: 1,
  wait: 1,
  obstacle: 1.8,
  wind: 0.5,
  new: 1,
  tired: 1,
  young: 0.8,
};

interface Remembered {
  readonly place: readonly number[];
  readonly day: number;
  readonly weight: number;
  readonly done: number;
  /** 0..1, how well; of those that were done. */
  readonly well: number;
}

function placeOf(at: Situation, traits: Traits): number[] {
  const much = troublesOf(at.figures, at);
  return (Object.keys(STEPS) as Trouble[]).map((one) => STEPS[one] * traits[one] * much[one]);
}

/**
 * Exemplar memory (after Nosofsky1986): the chance of a leg is the similarity-weighted share of the successes and
 * failures that the dog remembers at the skill, `exp(-city-block distance)`, fading as a power of the days, against an inborn
 * readiness that is less the farther the ask lies from the easy end. A miss is followed by help, remembered as half a success.
 */
export const exemplar: Mechanism = (kennel) => {
  const shared = { traits: traitsAround(kennel, 0.15), skills: bySkill(kennel, 0.04) };
  return (dog) => {
    const traits = traitsAround(dog, 0.3, shared.traits);
    const own = bySkill(dog, 0.05);
    const start = 1 + 0.04 * dog.normal();
    const falls = dog.between(0.1, 0.16);
    const inborn = dog.between(4, 10);
    const sharp = dog.between(1.2, 2);
    const fades = dog.between(0.15, 0.4);
    const quality = dog.between(0.75, 0.92);
    const memory = new Map<Skill, Remembered[]>();
    return {
      wakes() {},
      chances(at) {
        const place = placeOf(at, traits);
        const far = place.reduce((sum, x) => sum + x, 0);
        const ready = start + own[at.skill] + shared.skills[at.skill] - falls * far;
        let weight = inborn;
        let done = inborn * Math.min(0.97, Math.max(0.05, ready));
        let doneWeight = done;
        let well = done * quality;
        for (const one of memory.get(at.skill) ?? []) {
          let away = 0;
          for (let i = 0; i < place.length; i++) away += Math.abs(place[i]! - one.place[i]!);
          const near = one.weight * Math.exp(-sharp * away) * (1 + Math.max(0, at.day - one.day)) ** -fades;
          weight += near;
          done += near * one.done;
          doneWeight += near * one.done;
          well += near * one.done * one.well;
        }
        const notMissed = 0.01 + 0.975 * (done / weight);
        return plainTruth(chancesOf(notMissed, 0.02 + 0.96 * (well / doneWeight)));
      },
      learns(at, grade) {
        const place = placeOf(at, traits);
        const of = (weight: number, done: number, well: number) => ({
          place,
          day: at.day,
          weight,
          done,
          well,
        });
        const list = memory.get(at.skill) ?? [];
        memory.set(at.skill, list);
        if (grade === 'missed') list.push(of(0.5, 0, 0), of(0.5, 1, 0.6));
        else list.push(of(1, 1, grade === 'good' ? 1 : 0.5));
      },
      sent() {},
      expectation: () => ({ given: IDLE_EXPECTATION, unplanted: IDLE_EXPECTATION }),
    };
  };
};
