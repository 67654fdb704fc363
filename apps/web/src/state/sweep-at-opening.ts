import { spokenOf } from './kennel.ts';
import { type KennelState, useKennel } from './kennel-store.ts';
import { soundsWaiting } from './listened-drafts.ts';
import { sweepSounds } from './sweep-sounds.ts';
import { voicesOf } from './voices-of.ts';

/** Sweeps the sounds of the record in use once it was read and compared with its copy; never where anything of it may be missing. */
export async function sweepAtOpening(): Promise<void> {
  const { record, damage, missing, notSaved } = await copiesCompared();
  if (damage.length > 0 || missing > 0 || notSaved !== null) return;
  try {
    await sweepSounds({ store: voicesOf(record), spokenOf, waiting: soundsWaiting(), nowMs: Date.now() });
  } catch (error) {
    // Where the device gives no room for sounds there is nothing to sweep either; the next opening looks again.
    if (!(error instanceof DOMException)) throw error;
  }
}

function copiesCompared(): Promise<KennelState> {
  return new Promise((resolve) => {
    const look = (state: KennelState): boolean => {
      if (state.copies !== null) resolve(state);
      return state.copies !== null;
    };
    if (look(useKennel.getState())) return;
    const stop = useKennel.subscribe((state) => {
      if (look(state)) stop();
    });
  });
}
