import { type MemoryPlace, newMemoryPlace, openMemoryStore } from '@sedgeline/journal';
import type { SecondCopy } from './fact-keeper.ts';
import type { KennelPush, RecordName, Tap, TapAnswer, WorkScreen } from './kennel-calls.ts';
import { createKennelHost, type KennelHost, type TabNews } from './kennel-host.ts';

/** A kennel host with a world of its own: what the tests of the host and of its parts are played on. */
export interface HostInHand {
  readonly host: KennelHost;
  readonly pushes: KennelPush[];
  readonly news: TabNews[];
  readonly places: Readonly<Record<RecordName, MemoryPlace>>;
  /** The Work screen as it was last pushed. */
  screen(): WorkScreen;
  /** A tap made on the screen as it stands. */
  tap(tap: Tap): Promise<TapAnswer>;
  /** Runs what the host put off until nothing else waits. */
  idle(): void;
}

/** Every host has ids that are its own and a clock that goes a second with every look. */
export function hostInHand(
  name: string,
  places = bothPlaces(),
  copyPlace: MemoryPlace | null = null,
): HostInHand {
  const pushes: KennelPush[] = [];
  const news: TabNews[] = [];
  let nowMs = Date.UTC(2026, 2, 1, 9);
  let ids = 0;
  let job: () => void = () => undefined;
  const host = createKennelHost({
    openStore: async (record) => ({ ok: true, value: openMemoryStore(places[record]) }),
    openCopy: async (record) => (record === 'demo' || copyPlace === null ? null : openMemoryCopy(copyPlace)),
    deleteStore: async (record) => {
      places[record].lines.clear();
      places[record].notes.clear();
    },
    firstFacts: async (record) =>
      record === 'mine'
        ? []
        : [
            {
              id: 'invented',
              kind: 'dog-added',
              at: '2026-01-01T00:00:00Z',
              body: { dog: 'i', name: 'Invented' },
            },
          ],
    nowMs: () => {
      nowMs += 1000;
      return nowMs;
    },
    newId: () => {
      ids += 1;
      return `${name}-${ids}`;
    },
    push: (push) => pushes.push(push),
    tellTabs: (told) => news.push(told),
    breathe: () => Promise.resolve(),
    whenIdle: (later) => {
      job = later;
    },
  });
  const screen = (): WorkScreen => {
    const last = pushes.findLast((push) => push.view === 'work');
    if (last?.view !== 'work' || last.work === null)
      throw new Error('screen: expected Work to have been pushed');
    return last.work;
  };
  return {
    host,
    pushes,
    news,
    places,
    screen,
    tap: (tap) => host.calls.tap({ session: screen().view.session, turnCount: screen().turnCount, tap }),
    idle: () => job(),
  };
}

/** A second copy that is kept in memory. */
export function openMemoryCopy(place: MemoryPlace): SecondCopy {
  return { ...openMemoryStore(place), ids: async () => ({ ok: true, value: new Set(place.lines.keys()) }) };
}

function bothPlaces(): Readonly<Record<RecordName, MemoryPlace>> {
  return { mine: newMemoryPlace(), demo: newMemoryPlace() };
}

/** A dog and an open session about the stop: what the first open makes. */
export async function startSession(inHand: HostInHand): Promise<void> {
  await inHand.host.calls.open('mine');
  await inHand.host.calls.append([
    { kind: 'dog-added', body: { dog: 'd', name: 'Wren' } },
    { kind: 'session-opened', body: { session: 's', dog: 'd' } },
    { kind: 'session-focused', body: { session: 's', skill: 'stop' } },
  ]);
  await inHand.host.calls.watch({ session: 's' });
}
