import type { OrderedRep, OrderedTold } from './rep-order.ts';

const PRIME = 0x01000193;

/** FNV-1a over UTF-16 code units from two offsets at once, each text closed by a unit separator. */
class TwoHashes {
  #a = 0x811c9dc5;
  #b = 0x9dc5811c;

  add(text: string): void {
    let a = this.#a;
    let b = this.#b;
    for (let i = 0; i < text.length; i++) {
      const unit = text.charCodeAt(i);
      a = Math.imul(a ^ unit, PRIME);
      b = Math.imul(b ^ unit, PRIME);
    }
    this.#a = Math.imul(a ^ 0x1f, PRIME);
    this.#b = Math.imul(b ^ 0x1f, PRIME);
  }

  get text(): string {
    return `${(this.#a >>> 0).toString(16)}-${(this.#b >>> 0).toString(16)}`;
  }
}

/**
 * Fingerprint of the first `count` reps of an order, of all that a leg's chance depends on and can change: which reps, how often
 * amended, how graded, where, and after how many. 2 x 32 bits: facts are only ever added, so this guards against a mix-up
 * of records, not against malice.
 */
export function fingerprint(reps: readonly OrderedRep[], count: number): string {
  const hashes = new TwoHashes();
  for (let n = 0; n < count; n++) {
    const { rep, session, dog, repsSinceBreak } = reps[n]!;
    hashes.add(rep.rep);
    hashes.add(session.session);
    hashes.add(session.dog);
    hashes.add(session.ground ?? '');
    hashes.add(rep.expectation);
    hashes.add(String(dog?.bornMs ?? -1));
    hashes.add(String(4 * rep.amendments + (rep.clean ? 1 : 0)));
    hashes.add(String(repsSinceBreak));
    for (const { skill, grade, cause } of rep.legs) {
      hashes.add(skill);
      hashes.add(grade);
      hashes.add(cause ?? '');
    }
  }
  return `${count}-${hashes.text}`;
}

/** Fingerprint of the first `count` things told, with their places among the reps. */
export function toldFingerprint(told: readonly OrderedTold[], count: number): string {
  const hashes = new TwoHashes();
  for (const { told: one, dog, place } of told.slice(0, count)) {
    const { farthestM, ground, isWithdrawn, atMs, skill } = one;
    for (const part of [one.dog, skill, farthestM, ground, isWithdrawn, atMs, dog?.bornMs ?? -1, place])
      hashes.add(String(part));
  }
  return `${count}-${hashes.text}`;
}
