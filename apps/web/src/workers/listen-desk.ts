import type { OwnWhistle } from '@sedgeline/engine/sound';
import {
  type JoinProposal,
  type KennelOfFacts,
  type KeptSound,
  keepSoundFacts,
  type ListenedSound,
  ownWhistleOf,
  type SoundRecord,
  type TapFact,
} from '@sedgeline/projections';

/** What Listen asks of the worker. What is kept goes down by `append`. */
export type ListenCalls = {
  /** The whistle of the session's handler, as far as kept joins tell; `null` before there is one. */
  readonly ownWhistle: (session: string) => Promise<OwnWhistle | null>;
  /** Sounds of the session that were kept. */
  readonly soundsOf: (session: string) => Promise<readonly SoundRecord[]>;
  /** Which of what was heard may belong to which rep; `null` for a session that no fact names. */
  readonly joinSound: (of: {
    readonly session: string;
    readonly sound: ListenedSound;
  }) => Promise<JoinProposal | null>;
  /** The facts that keep a sound and its joins. */
  readonly keepSoundFacts: (kept: KeptSound) => Promise<readonly TapFact[]>;
};

/** The desk of Listen: joins what was heard to the open record. Nothing here writes. */
export function listenCalls(inUse: () => KennelOfFacts, newId: () => string): ListenCalls {
  return {
    ownWhistle: async (session) => {
      const { record } = inUse();
      const handler = record.sessions.find((one) => one.session === session)?.handler ?? null;
      return ownWhistleOf(record, handler);
    },
    soundsOf: async (session) => inUse().record.sounds.filter((sound) => sound.session === session),
    joinSound: async ({ session, sound }) => inUse().listen(session, sound),
    keepSoundFacts: async (kept) => keepSoundFacts(inUse().record, kept, newId),
  };
}
