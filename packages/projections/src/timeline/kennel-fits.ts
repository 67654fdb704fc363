import {
  type AbilityPriors,
  FITTED,
  fitKennel,
  type KennelFitAnswer,
  type LegResult,
  shippedPriors,
} from '@sedgeline/engine/ability';

/** A fit that was made, by the fingerprint of the reps it was made from. Plain data. */
export type FitNote = readonly [key: string, answer: KennelFitAnswer];

/** A fit that a walk would use and that nobody has made yet. */
export interface WantedFit {
  readonly key: string;
  readonly legs: readonly LegResult[];
}

/**
 * The fits of a kennel's own priors, by the fingerprint of the reps they were made from: a projection that can be thrown away and
 * made again. `at-once` makes each when a walk comes to it; `later` leaves it wanted, so that no tap waits for it, and whoever
 * holds the kennel makes it when there is time (`put`). Either way a walk in the end says the same.
 */
export class KennelFits {
  readonly #when: 'at-once' | 'later';
  readonly #known = new Map<string, KennelFitAnswer>();
  #wanted: WantedFit | null = null;

  constructor(when: 'at-once' | 'later', known: readonly FitNote[] = []) {
    this.#when = when;
    for (const [key, answer] of known) this.#known.set(key, answer);
  }

  /** The fit of these reps; `null` while it is wanted. */
  of(key: string, legs: () => readonly LegResult[]): KennelFitAnswer | null {
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    if (this.#when === 'later') {
      this.#wanted = { key, legs: legs() };
      return null;
    }
    const made = fitKennel(legs());
    if (made.kind === 'stopped') throw new RangeError('fit: expected to run to its end');
    this.#known.set(key, made);
    return made;
  }

  get wanted(): WantedFit | null {
    return this.#wanted;
  }

  put(key: string, answer: KennelFitAnswer): void {
    this.#known.set(key, answer);
    if (this.#wanted?.key === key) this.#wanted = null;
  }
}

/** A note's value as fits; those that are none are let fall: they can be made again. */
export function readFitNotes(note: unknown): FitNote[] {
  if (!Array.isArray(note)) return [];
  return note.filter((fit): fit is FitNote => {
    const [key, answer] = Array.isArray(fit) ? fit : [];
    return typeof key === 'string' && typeof answer?.kind === 'string' && isShippedWith(answer);
  });
}

/** Made under the priors that this program comes with: all that a fit leaves alone is as shipped. */
function isShippedWith(answer: KennelFitAnswer): boolean {
  if (answer.kind !== 'fitted') return true;
  const unfitted = (priors: AbilityPriors) =>
    JSON.stringify(Object.entries(priors).filter(([name]) => !FITTED.some((fitted) => fitted === name)));
  return unfitted(answer.priors) === unfitted(shippedPriors);
}
