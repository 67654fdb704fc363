/**
 * How long a plan takes, and whether it keeps its word: a thousand plans over the invented kennel and over random records and
 * requests, each judged by the judge of plans, which shares no code with the search. Times are of the processor, beside the filter's
 * for 10,000 legs in the same run. Run: `npx tsx bench/plan.ts [plans]`.
 */
import { falseClaims, judgePlan, type PlanInput, planFaults, planSession } from '@sedgeline/engine/session';
import { createKennel, planFor } from '@sedgeline/projections';
import { planFacts } from '../packages/projections/src/plan/plan-facts.ts';
import { planInput } from '../packages/projections/src/plan/plan-input.ts';
import { randomKennel, randomRequest } from '../packages/projections/src/plan/random-kennel.fixture.ts';
import { trainedDog } from '../packages/projections/src/plan/trained-dog.fixture.ts';
import { countLegs, manyFacts } from './app-open/many-facts.ts';
import { filterMs, processorMs } from './measure/filter-ms.ts';

const PLANS = Number(process.argv[2] ?? 1000);
const DAY_MS = 86_400_000;

function randomInput(seed: number): PlanInput {
  const day = randomKennel(seed);
  const kennel = createKennel();
  kennel.add(day.facts);
  return planInput(kennel.record, kennel.timeline(), randomRequest(seed), day.atMs + DAY_MS, seed);
}

const trained = trainedDog();
const kennel = createKennel();
kennel.add(trained.facts);
const trainedInput = (seed: number): PlanInput => {
  const request = { dog: 'wren', minutes: 15, ground: 'home' };
  return planInput(kennel.record, kennel.timeline(), request, trained.atMs + DAY_MS, seed);
};

const quantile = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;

/** All that the worker does for a plan, in a record of some 20,000 legs of thirty dogs: reading the record, planning, judging. */
function runWhole(): void {
  const facts = manyFacts(11_000);
  const many = createKennel();
  many.add(facts);
  const dogs = [...many.record.dogs.keys()];
  const atMs = (many.record.lastAtMs ?? 0) + DAY_MS;
  many.timeline();
  const took: number[] = [];
  for (let seed = 0; seed < PLANS / 4; seed++) {
    const dog = dogs[seed % dogs.length] ?? '';
    took.push(processorMs(() => planFor(many, { dog, minutes: 15 }, { atMs, seed })));
  }
  print(`${countLegs(facts)} legs, ${dogs.length} dogs, the whole of it`, took, '');
}

function print(name: string, took: readonly number[], more: string): void {
  const sorted = took.toSorted((a, b) => a - b);
  const figures = [0.5, 0.9, 0.99].map((share) => quantile(sorted, share).toFixed(0));
  process.stdout.write(
    `${name}: ${took.length} plans${more}; ms ${figures.join(' / ')} (median / 90 % / 99 %)\n`,
  );
}

function run(name: string, inputOf: (seed: number) => PlanInput): void {
  const took: number[] = [];
  let broken = 0;
  for (let seed = 0; seed < PLANS; seed++) {
    const input = inputOf(seed);
    let plan = null as ReturnType<typeof planSession> | null;
    took.push(
      processorMs(() => {
        plan = planSession(input);
      }),
    );
    if (plan === null) throw new Error('expected a plan');
    const facts = planFacts(input);
    broken += falseClaims(plan, judgePlan(plan, facts)).length + planFaults(plan, facts).length;
  }
  print(name, took, `, ${broken} words not kept`);
}

process.stdout.write(`filter, 10,000 legs: ${filterMs().toFixed(0)} ms\n`);
run('one dog in training', trainedInput);
run('any record, any request', randomInput);
runWhole();
