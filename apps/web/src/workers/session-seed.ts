/**
 * Seed of a session's own chance (which sends are run straight through): FNV-1a over the id's UTF-16 code units, so
 * that a reload in the field gives the same next rep and no two sessions share an order.
 */
export function sessionSeed(session: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < session.length; i++) {
    hash = Math.imul(hash ^ session.charCodeAt(i), 0x01000193) >>> 0;
  }
  return hash;
}
