import type { LaidLeg } from '../picture/laid-leg.ts';

/** One change of a plan by the handler's hand. Reps go by their numbers `n`, from 1. */
export type PlanEdit =
  | { readonly do: 'drop'; readonly n: number }
  | { readonly do: 'move'; readonly n: number; readonly to: number }
  /** Something else in its place: the `turn`-th best of what else could be asked there (0 the best). */
  | { readonly do: 'swap'; readonly n: number; readonly turn: number }
  /** One more rep after that number; 0: at the beginning. */
  | { readonly do: 'add'; readonly after: number; readonly turn: number }
  /** The handler's own asks, whatever the engine thinks of them: the rules say so. */
  | { readonly do: 'ask'; readonly n: number; readonly legs: readonly LaidLeg[] }
  | { readonly do: 'break'; readonly after: number; readonly takes: boolean };
