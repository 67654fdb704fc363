import type { VoiceStore } from '../devices/voice-store.ts';

/** A sound of which nothing speaks may belong to a note that another tab is just keeping: after so long it does not (our judgement, 2026). */
const LEFT_AFTER_MS = 3_600_000;

interface Sweeping {
  readonly store: Pick<VoiceStore, 'begunBefore' | 'settle' | 'drop'>;
  /** Those of some ids that any fact speaks of. The record has to be whole. */
  readonly spokenOf: (ids: readonly string[]) => Promise<readonly string[]>;
  /** Sounds that wait on the device to be spoken of. */
  readonly waiting: ReadonlySet<string>;
  readonly nowMs: number;
}

/**
 * Drops sounds that were begun and left: the app was killed between keeping the sound and the fact that was to speak of it. Only
 * such a sound was ever noted as begun; one that a fact speaks of is settled, one that still waits is left as it is.
 */
export async function sweepSounds({ store, spokenOf, waiting, nowMs }: Sweeping): Promise<void> {
  const left = (await store.begunBefore(nowMs - LEFT_AFTER_MS)).filter((id) => !waiting.has(id));
  if (left.length === 0) return;
  const spoken = new Set(await spokenOf(left));
  for (const id of left) await (spoken.has(id) ? store.settle(id) : store.drop(id));
}
