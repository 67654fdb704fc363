import type { Fact, FactStore, StoreResult } from '@sedgeline/journal';
import {
  createKennel,
  type DogsView,
  type FitNote,
  type KennelOfFacts,
  readFitNotes,
  type TapFact,
} from '@sedgeline/projections';
import { CHECKPOINT_NOTE, type Checkpoint, makeCheckpoint, readCheckpoint } from './checkpoint.ts';
import { createFactKeeper, type FactKeeper, type SecondCopy } from './fact-keeper.ts';
import { createFactStamper } from './fact-stamper.ts';
import type { RecordName, WorkScreen } from './kennel-calls.ts';
import { createWorkDesk, type Hand, type WorkDesk } from './work-desk.ts';

/** The world as a record needs it. */
export interface RecordDoors {
  readonly openStore: (record: RecordName) => Promise<StoreResult<FactStore>>;
  /** The second copy of a record; `null` where this browser has none, and for the invented record. */
  readonly openCopy: (record: RecordName) => Promise<SecondCopy | null>;
  readonly nowMs: () => number;
  readonly newId: () => string;
  /** Facts that an empty record starts with. */
  readonly firstFacts: (record: RecordName) => Promise<readonly Fact[]>;
}

/** A record that is open: its facts folded, its store at hand. */
export interface OpenRecord {
  readonly name: RecordName;
  readonly kennel: KennelOfFacts;
  readonly keeper: FactKeeper;
  readonly damage: readonly { readonly where: string; readonly message: string }[];
  readonly facts: () => readonly Fact[];
  /** Stamps and keeps facts; `hear` learns of what was added. */
  readonly add: (
    taps: readonly TapFact[],
  ) => Promise<{ readonly saved: boolean; readonly facts: readonly Fact[] }>;
  /** Facts that are on disk already: another tab wrote them. */
  readonly addFromElsewhere: (facts: readonly Fact[]) => void;
  /** Puts on disk, and into the record, facts that were stamped elsewhere. */
  readonly keepFromElsewhere: (facts: readonly Fact[]) => Promise<boolean>;
  /** Brings the record and its second copy together; gives how many facts came into the record by it. */
  readonly compareCopies: () => Promise<number>;
  /** How far the device's time is behind what is on record, milliseconds. */
  readonly behindMs: () => number;
  readonly dogs: () => DogsView;
  readonly desk: (session: string, onKept: (facts: readonly Fact[]) => void) => WorkDesk;
  readonly leaveHand: (hand: Hand) => Promise<void>;
  /** Keeps a fit of the kennel's own priors, so that it need not be made again. */
  readonly keepFit: (fit: FitNote) => Promise<void>;
  readonly writeCheckpoint: (work: WorkScreen | null) => Promise<void>;
}

const DEVICE_NOTE = 'device';
const HAND_NOTE = 'hand';
const WALK_NOTE = 'walk';
const FIT_NOTE = 'fits';

/**
 * Opens a record: the checkpoint first (`showRough`), then every fact, walked on from where the last session began. A store that cannot be opened or read is no end
 * of work: the record starts empty, what is added stays in memory, and the keeper says so.
 */
export async function openRecord(
  name: RecordName,
  doors: RecordDoors,
  showRough: (checkpoint: Checkpoint) => void,
): Promise<OpenRecord> {
  const { nowMs, newId } = doors;
  const keeper = createFactKeeper({
    openStore: () => doors.openStore(name),
    openCopy: () => doors.openCopy(name),
  });
  const checkpoint = readCheckpoint(await keeper.readNote(CHECKPOINT_NOTE));
  if (checkpoint !== null) showRough(checkpoint);
  let walkNote = await keeper.readNote(WALK_NOTE);
  const stored = await keeper.load();
  const stamper = createFactStamper(await deviceOf(keeper, newId), nowMs, newId);
  const fitNotes = readFitNotes(await keeper.readNote(FIT_NOTE));
  const kennel = createKennel({ walkNote, fitNotes, fits: 'later' });
  const known = new Map<string, Fact>();
  /** A fact may come twice: told by another tab, and found on the disk. */
  const take = (facts: readonly Fact[]): number => {
    const fresh = facts.filter(({ id }) => !known.has(id));
    stamper.see(fresh);
    kennel.add(fresh);
    for (const fact of fresh) known.set(fact.id, fact);
    return fresh.length;
  };
  take(stored.facts);
  if (known.size === 0) {
    const first = await doors.firstFacts(name);
    if (first.length > 0) {
      await keeper.keep(first);
      take(first);
    }
  }
  let hand = (await keeper.readNote(HAND_NOTE)) as Hand | undefined;
  const add = async (taps: readonly TapFact[]) => {
    const facts = stamper.stamp(taps);
    const saved = await keeper.keep(facts);
    take(facts);
    return { saved, facts };
  };
  return {
    name,
    kennel,
    keeper,
    damage: stored.damage,
    facts: () => [...known.values()],
    add,
    addFromElsewhere: (facts) => {
      take(facts);
    },
    keepFromElsewhere: async (facts) => {
      const saved = await keeper.keep(facts);
      take(facts);
      return saved;
    },
    compareCopies: async () => take(await keeper.compare([...known.values()])),
    behindMs: stamper.behindMs,
    dogs: () => kennel.dogs(nowMs()),
    desk: (session, onKept) =>
      createWorkDesk(session, hand ?? null, {
        kennel,
        nowMs,
        newId,
        keep: async (taps) => {
          const { saved, facts } = await add(taps);
          onKept(facts);
          return saved;
        },
      }),
    leaveHand: async (left) => {
      hand = left;
      await keeper.writeNote(HAND_NOTE, left);
    },
    keepFit: (fit) => {
      fitNotes.push(fit);
      return keeper.writeNote(FIT_NOTE, fitNotes);
    },
    writeCheckpoint: async (work) => {
      await keeper.writeNote(CHECKPOINT_NOTE, makeCheckpoint(kennel.dogs(nowMs()), work));
      const note = kennel.walkNote();
      if (note === walkNote) return;
      walkNote = note;
      await keeper.writeNote(WALK_NOTE, note);
    },
  };
}

async function deviceOf(keeper: FactKeeper, newId: () => string): Promise<string> {
  const noted = await keeper.readNote(DEVICE_NOTE);
  if (typeof noted === 'string' && noted !== '') return noted;
  const device = newId().slice(0, 8);
  await keeper.writeNote(DEVICE_NOTE, device);
  return device;
}
