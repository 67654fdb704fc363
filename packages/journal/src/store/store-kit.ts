import { damageCases } from './kit/damage-cases.ts';
import { durabilityCases } from './kit/durability-cases.ts';
import { identityCases } from './kit/identity-cases.ts';
import type { KitCase, StorePlace } from './kit/kit-case.ts';
import { sharingCases } from './kit/sharing-cases.ts';

export type { KitCase, StorePlace } from './kit/kit-case.ts';
export { kitFact } from './kit/kit-facts.ts';

/**
 * The contract kit of the storage port: one case for each rule of `docs/storage-port.md`, at least. Framework-free, so
 * that a test runner and a page in a real browser run the very same cases: register each as a test named
 * `[rule] name`, and let `run` throw or not. `makePlace` gives a new empty place for each case.
 */
export function storeKitCases(makePlace: () => Promise<StorePlace>): readonly KitCase[] {
  return [...durabilityCases, ...identityCases, ...sharingCases, ...damageCases].map(
    ({ rule, name, run }) => ({
      rule,
      name,
      run: async () => {
        const place = await makePlace();
        try {
          await run(place);
        } finally {
          await place.dispose();
        }
      },
    }),
  );
}

/** The rules that have a case, in order. */
export function kitRules(cases: readonly KitCase[]): readonly string[] {
  return [...new Set(cases.map((one) => one.rule))].sort((a, b) => Number(a.slice(1)) - Number(b.slice(1)));
}
