import { createAbilityFilter, EASY_CONTEXT } from '@sedgeline/engine/ability';

/** Processor time of some work, milliseconds. */
export function processorMs(work: () => void): number {
  const from = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(from);
  return (user + system) / 1000;
}

/** Processor time of ten thousand legs of one dog through the filter, milliseconds: what other work is held against in the same run. */
export function filterMs(): number {
  return processorMs(() => {
    const filter = createAbilityFilter();
    for (let n = 0; n < 10_000; n++) {
      filter.observe({
        dog: 'wren',
        skill: 'stop',
        session: `s${n >> 4}`,
        atMs: n * 3_600_000,
        ask: { distanceM: 10 + (n % 40), wayFraction: 0.5 },
        context: EASY_CONTEXT,
        grade: n % 5 === 0 ? 'missed' : 'good',
        weight: 1,
      });
    }
  });
}
