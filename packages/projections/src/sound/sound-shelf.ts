import {
  compareKeys,
  readTime,
  type SoundDropped,
  type SoundHeard,
  type SoundJoined,
} from '@sedgeline/journal';
import { earlier, type Keyed, later } from '../record/keyed.ts';
import type { SoundRecord } from './sound-record.ts';

/** Every fact about one sound. */
interface SoundThread {
  heard: Keyed<SoundHeard> | null;
  joined: Keyed<SoundJoined> | null;
  dropped: Keyed<SoundDropped> | null;
  facts: number;
}

/** Facts about sounds. What comes out depends on the set of facts alone, whatever order they came in. */
export class SoundShelf {
  readonly #sounds = new Map<string, SoundThread>();

  addHeard(fact: Keyed<SoundHeard>): void {
    const thread = this.#thread(fact.body.sound);
    thread.heard = earlier(thread.heard, fact);
  }

  addJoined(fact: Keyed<SoundJoined>): void {
    const thread = this.#thread(fact.body.sound);
    thread.joined = later(thread.joined, fact);
  }

  addDropped(fact: Keyed<SoundDropped>): void {
    const thread = this.#thread(fact.body.sound);
    thread.dropped = later(thread.dropped, fact);
  }

  /** The sounds as they stand, in the order in which they were heard, and how many facts hang on nothing. */
  folded(hasSession: (session: string) => boolean): {
    readonly sounds: readonly SoundRecord[];
    readonly setAside: number;
  } {
    let setAside = 0;
    const sounds: SoundRecord[] = [];
    for (const { heard, joined, dropped, facts } of this.#sounds.values()) {
      if (heard === null || !hasSession(heard.body.session)) {
        setAside += facts;
        continue;
      }
      if (dropped !== null && dropped.body.stands !== true) continue;
      const { sound, session, from, name, lengthS, startsAt, bytes, sha256, whistles, clicks } = heard.body;
      const starts = readTime(startsAt ?? '');
      sounds.push({
        sound,
        session,
        orderKey: heard.key,
        from,
        name,
        lengthS,
        startsAtMs: starts.ok ? starts.ms : null,
        bytes: bytes ?? null,
        sha256: sha256 ?? null,
        whistles,
        clicks,
        joins: joined?.body.joins ?? [],
      });
    }
    sounds.sort((a, b) => compareKeys(a.orderKey, b.orderKey));
    return { sounds, setAside };
  }

  #thread(sound: string): SoundThread {
    const thread = this.#sounds.get(sound) ?? { heard: null, joined: null, dropped: null, facts: 0 };
    thread.facts += 1;
    this.#sounds.set(sound, thread);
    return thread;
  }
}
