/** What the driver is told: what the keys are called, and the chance it plays by. */
export interface DriverOrders {
  readonly seed: number;
  /** Names of the keys that lead on from a suggested break or end. */
  readonly goOn: readonly string[];
}

/** A tap that the screen acknowledged: which rep it was, and how many of its legs are graded by now, in grades. */
export interface Acknowledged {
  readonly rep: number;
  readonly grades: readonly string[];
}

/**
 * Runs in the page: taps for ever as a quick handler would, a grade key or the wide key by chance, and tells the test's own function
 * `acknowledge` each tap that the screen has answered (a graded leg, the next rep). It taps on when the test has heard: at most the tap in
 * hand is one that the test does not know of. Self-contained, since it is handed to the page as text.
 */
export async function tapForEver({ seed, goOn }: DriverOrders): Promise<never> {
  const { acknowledge } = globalThis as unknown as { acknowledge(told: Acknowledged): Promise<void> };
  let state = seed;
  // A small generator is enough for a choice of keys (mulberry32, public domain).
  const random = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  const all = (selector: string) => [...document.querySelectorAll<HTMLElement>(selector)];
  const repShown = () => Number(/\d+/.exec(all('.work-head-rep')[0]?.textContent ?? '')?.[0] ?? 0);
  const gradesShown = () => all('.work-leg[data-grade]').map((leg) => leg.dataset.grade ?? '');
  const frame = () => new Promise((resolve) => setTimeout(resolve, 4));
  const isReady = () => all('.work-pad')[0]?.getAttribute('aria-disabled') === 'false';
  for (;;) {
    await frame();
    if (all('.work-pause').length > 0) {
      all('button')
        .find((key) => goOn.includes(key.textContent ?? ''))
        ?.click();
      continue;
    }
    if (!isReady()) continue;
    const rep = repShown();
    const before = gradesShown();
    const legs = all('.work-leg').length;
    if (rep === 0 || legs === 0) continue;
    const isWide = random() < 0.4;
    const grade = random() < 0.5 ? 'good' : 'fair';
    const key = all(isWide ? '.work-pad .work-wide' : `.work-pad .work-key[data-grade="${grade}"]`)[0];
    if (key === undefined) continue;
    key.click();
    const given = isWide ? Array.from({ length: legs - before.length }, () => 'good') : [grade];
    while (repShown() === rep && gradesShown().length === before.length) await frame();
    const told: Acknowledged = { rep, grades: [...before, ...given] };
    await acknowledge(told);
  }
}
