import { type Fact, writeJournal } from '@sedgeline/journal';
import { patternsOfDog, progressOfDog, proofingOfDog, whyInKennel } from '@sedgeline/projections';
import { backCalls } from './back-desk.ts';
import { factsToBringBack } from './bring-back.ts';
import { openSessionOf } from './checkpoint.ts';
import { filmCalls } from './film-desk.ts';
import { groundCalls } from './ground-desk.ts';
import type { KennelCalls, KennelPush, RecordName } from './kennel-calls.ts';
import { listenCalls } from './listen-desk.ts';
import { type OpenRecord, openRecord, type RecordDoors } from './open-record.ts';
import { planningCalls } from './planning-desk.ts';
import { spokenOf } from './spoken-of.ts';
import type { WorkDesk } from './work-desk.ts';

/** What tabs on one record tell each other. */
export type TabNews =
  | { readonly record: RecordName; readonly kept: readonly Fact[] }
  | { readonly record: RecordName; readonly left: true };

/** The world as the host needs it. */
export interface HostDoors extends RecordDoors {
  readonly push: (push: KennelPush) => void;
  readonly tellTabs: (news: TabNews) => void;
  readonly deleteStore: (record: RecordName) => Promise<unknown>;
  /** Runs a job when nothing else waits; a job that is still waiting is replaced. */
  readonly whenIdle: (job: () => void) => void;
  /** Lets waiting calls be answered. */
  readonly breathe: () => Promise<void>;
}

/** The kennel behind the screens: opens a record, answers calls, pushes views. */
export interface KennelHost {
  readonly calls: KennelCalls;
  hearTab(news: TabNews): void;
}

const SHUT = 'open: expected a record to be open first';

export function createKennelHost(doors: HostDoors): KennelHost {
  const { push, nowMs } = doors;
  let record: OpenRecord | null = null;
  let desk: WorkDesk | null = null;
  /** Desks of this record's sessions: dogs worked in turn each keep what is in hand. */
  const desks = new Map<string, WorkDesk>();
  let standingOf: string | null = null;
  /** The session that the screens were last shown as it is: to be asked for it again is no reason to draw it again. */
  let shown: string | null = null;
  let isFitting = false;

  const inUse = (): OpenRecord => {
    if (record === null) throw new Error(SHUT);
    return record;
  };
  const pushWork = ({ name }: OpenRecord): void => {
    if (desk === null) return;
    shown = desk.session;
    push({ view: 'work', record: name, rough: false, session: desk.session, work: desk.show() });
  };
  const pushStanding = ({ name, kennel }: OpenRecord): void => {
    if (standingOf === null) return;
    const standing = kennel.standing(standingOf, nowMs());
    push({ view: 'standing', record: name, dog: standingOf, standing });
  };
  const pushRest = (open: OpenRecord): void => {
    push({ view: 'dogs', record: open.name, rough: false, dogs: open.dogs() });
    pushStanding(open);
  };
  /** After a change: Work and what was not saved at once, the rest and the checkpoint when there is a moment. */
  const changed = (open: OpenRecord, isDogsUrgent: boolean): void => {
    push({ view: 'not-saved', record: open.name, notSaved: open.keeper.notSaved });
    push({ view: 'behind', record: open.name, behindMs: open.behindMs() });
    pushWork(open);
    if (isDogsUrgent) pushRest(open);
    doors.whenIdle(() => {
      if (open !== record) return;
      if (!isDogsUrgent) pushRest(open);
      void open.writeCheckpoint(desk?.show() ?? null);
      void fit(open);
    });
  };
  /** Fits the kennel's own priors where the record has come to that, between taps; left as soon as the record is. */
  const fit = async (open: OpenRecord): Promise<void> => {
    if (isFitting) return;
    isFitting = true;
    try {
      const fitting = open.kennel.fitting();
      for (let at = fitting?.next(); at !== undefined && open === record; at = fitting?.next()) {
        if (at.done === true) {
          // The rep in hand stays as it was suggested: only what is looked at is new.
          await open.keepFit(at.value);
          pushRest(open);
          await open.writeCheckpoint(desk?.show() ?? null);
          return;
        }
        await doors.breathe();
      }
    } finally {
      isFitting = false;
    }
  };
  /** Sees that record and second copy agree, and says so: what another tab wrote while nobody listened comes in by this too. */
  const compareCopies = async (open: OpenRecord): Promise<void> => {
    await doors.breathe();
    const came = await open.compareCopies();
    if (open !== record) return;
    if (came > 0) {
      desk?.refresh();
      changed(open, true);
    }
    const { restored, hasCopy } = open.keeper;
    push({ view: 'copies', record: open.name, restored, hasCopy, facts: open.facts().length });
  };
  const tellTabs = (kept: readonly Fact[]): void => doors.tellTabs({ record: inUse().name, kept });
  const deskOf = (session: string): WorkDesk => {
    if (desk?.session === session) return desk;
    const left = desks.get(session);
    desk = left ?? inUse().desk(session, tellTabs);
    left?.refresh();
    shown = null;
    desks.set(session, desk);
    return desk;
  };
  const leave = async (): Promise<void> => {
    const left = record;
    record = null;
    desk = null;
    desks.clear();
    standingOf = null;
    shown = null;
    await left?.keeper.close();
  };

  const calls: KennelCalls = {
    ...backCalls(() => inUse().kennel),
    ...filmCalls(() => inUse().kennel),
    ...groundCalls(() => inUse().kennel),
    ...listenCalls(() => inUse().kennel, doors.newId),
    ...planningCalls(() => inUse().kennel, nowMs),
    open: async (name) => {
      await leave();
      const opened = await openRecord(name, doors, ({ dogs, open }) => {
        push({ view: 'dogs', record: name, rough: true, dogs });
        if (open?.work)
          push({ view: 'work', record: name, rough: true, session: open.session, work: open.work });
      });
      record = opened;
      const dogs = opened.dogs();
      const openSession = openSessionOf(dogs);
      // Work first: it is what the handler waits for.
      if (openSession !== null) deskOf(openSession);
      changed(opened, false);
      push({ view: 'dogs', record: name, rough: false, dogs });
      push({ view: 'damage', record: name, damage: opened.damage });
      void compareCopies(opened);
      return { openSession };
    },
    watch: async ({ standing, session }) => {
      const open = inUse();
      if (standing !== undefined) {
        standingOf = standing;
        pushStanding(open);
      }
      if (typeof session === 'string') {
        deskOf(session);
        if (shown !== session) pushWork(open);
      }
    },
    append: async (taps) => {
      const open = inUse();
      const { saved, facts } = await open.add(taps);
      tellTabs(facts);
      desk?.refresh();
      changed(open, true);
      return { saved };
    },
    tap: async ({ session, turnCount, tap }) => {
      const open = inUse();
      const at = deskOf(session);
      const answer = await at.tap(turnCount, tap);
      if (answer.kind === 'stale') return answer;
      changed(open, tap.do === 'close');
      void open.leaveHand(at.hand);
      return answer;
    },
    history: async (rep) => inUse().kennel.history(rep),
    why: async (rep) => whyInKennel(inUse().kennel, rep),
    patterns: async (dog) => {
      const { kennel } = inUse();
      return patternsOfDog(kennel.record, kennel.timeline(), dog);
    },
    progress: async ({ dog, skill }) => {
      const { kennel } = inUse();
      return progressOfDog(kennel.record, kennel.timeline(), dog, skill);
    },
    proofing: async ({ dog, skill }) => {
      const { kennel } = inUse();
      return proofingOfDog(kennel.record, kennel.timeline(), dog, skill, nowMs());
    },
    refresh: async () => {
      desk?.refresh();
      changed(inUse(), false);
      void compareCopies(inUse());
    },
    retry: async () => {
      const open = inUse();
      const saved = await open.keeper.retry();
      push({ view: 'not-saved', record: open.name, notSaved: open.keeper.notSaved });
      return { saved };
    },
    spokenOf: async (ids) => spokenOf(inUse().facts(), ids),
    factsAsLines: async () => writeJournal(inUse().facts()),
    bringBack: async (text) => {
      const open = inUse();
      const { facts, ...told } = factsToBringBack(text, open.facts());
      const saved = await open.keepFromElsewhere(facts);
      tellTabs(facts);
      desk?.refresh();
      changed(open, true);
      return { ...told, saved };
    },
    notSavedAsLines: async () => writeJournal(inUse().keeper.notSavedFacts),
    leaveDemo: async () => {
      doors.tellTabs({ record: 'demo', left: true });
      await leave();
      await doors.deleteStore('demo');
    },
  };
  return {
    calls,
    hearTab: (news) => {
      if (record === null || news.record !== record.name) return;
      const open = record;
      if ('left' in news) {
        void leave().then(() => push({ view: 'record-left', record: news.record }));
        return;
      }
      open.addFromElsewhere(news.kept);
      desk?.refresh();
      changed(open, true);
    },
  };
}
