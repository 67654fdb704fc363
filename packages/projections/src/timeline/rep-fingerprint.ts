import type { OrderedRep } from './rep-order.ts';

const PRIME = 0x01000193;

function mixed(hash: number, text: string): number {
  let h = hash;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), PRIME);
  return Math.imul(h ^ 0x1f, PRIME);
}

/**
 * Fingerprint of the first `count` reps of an order, of all that a leg's chance depends on and can change: which reps, how often
 * amended, how graded, where, and after how many. FNV-1a over UTF-16 code units with two offsets, 2 x 32 bits: facts
 * are only ever added, so this guards against a mix-up of records, not against malice.
 */
export function fingerprint(reps: readonly OrderedRep[], count: number): string {
  let a = 0x811c9dc5;
  let b = 0x9dc5811c;
  for (let n = 0; n < count; n++) {
    const { rep, session, dog, repsSinceBreak } = reps[n]!;
    const grades = rep.legs.map(({ skill, grade, cause }) => `${skill} ${grade} ${cause}`);
    const parts = [
      rep.rep,
      rep.amendments,
      rep.clean,
      rep.expectation,
      grades,
      session.session,
      session.dog,
      session.ground,
      dog?.bornMs,
      repsSinceBreak,
    ].join('|');
    a = mixed(a, parts);
    b = mixed(b, parts);
  }
  return `${count}-${(a >>> 0).toString(16)}-${(b >>> 0).toString(16)}`;
}
