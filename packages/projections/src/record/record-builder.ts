import {
  compareKeys,
  type DogAdded,
  type DogRested,
  type Fact,
  type GoalSet,
  type GroundAdded,
  type GroundPutAway,
  type HandlerAdded,
  type LayoutDrawn,
  type LayoutPutAway,
  type LevelStated,
  orderKey,
  readTime,
  type SessionPlanned,
} from '@sedgeline/journal';
import { FilmShelf } from '../film/film-shelf.ts';
import { SoundShelf } from '../sound/sound-shelf.ts';
import { insertInOrder, type Keyed, later } from './keyed.ts';
import { RepThread } from './rep-thread.ts';
import { SessionThread } from './session-thread.ts';
import type { DogRecord, PlanRecord, SessionRecord, ToldRecord, TrainingRecord } from './training-record.ts';

/**
 * Folds facts into the training record, one by one or many at once. Expects facts that `validateFact` let pass. What
 * comes out depends on the set of facts alone: not on their order, nor on how they were split. The laws are tested in
 * `record-builder.property.test.ts`.
 */
export class RecordBuilder {
  readonly #ids = new Set<string>();
  readonly #dogs = new Map<string, Keyed<DogAdded>>();
  readonly #rests = new Map<string, Keyed<DogRested>>();
  readonly #grounds = new Map<string, Keyed<GroundAdded>>();
  readonly #handlers = new Map<string, Keyed<HandlerAdded>>();
  readonly #layouts = new Map<string, Keyed<LayoutDrawn>>();
  readonly #goals = new Map<string, Keyed<GoalSet>>();
  readonly #plans = new Map<string, Keyed<SessionPlanned>>();
  readonly #groundsAway = new Map<string, Keyed<GroundPutAway>>();
  readonly #layoutsAway = new Map<string, Keyed<LayoutPutAway>>();
  readonly #told: Keyed<LevelStated>[] = [];
  readonly #reps = new Map<string, RepThread>();
  readonly #sessions = new Map<string, SessionThread>();
  readonly #films = new FilmShelf();
  readonly #sounds = new SoundShelf();
  #unknown = 0;
  #lastAtMs: number | null = null;
  #record: TrainingRecord | null = null;

  add(facts: Iterable<Fact>): void {
    for (const fact of facts) {
      if (this.#ids.has(fact.id)) continue;
      this.#ids.add(fact.id);
      this.#addOne(fact);
      this.#record = null;
    }
  }

  /** Facts about one rep: for undo, and for showing its history. */
  repThread(rep: string): RepThread | null {
    return this.#reps.get(rep) ?? null;
  }

  record(): TrainingRecord {
    this.#record ??= this.#folded();
    return this.#record;
  }

  #addOne(fact: Fact): void {
    const reading = readTime(fact.at);
    const atMs = reading.ok ? reading.ms : Number.NaN;
    if (this.#lastAtMs === null || atMs > this.#lastAtMs) this.#lastAtMs = atMs;
    const keyed = <Body>(): Keyed<Body> => ({ key: orderKey(fact), atMs, fact, body: fact.body as Body });
    const session = () => this.#session(fact.body.session as string);
    switch (fact.kind) {
      case 'dog-added':
        latest(this.#dogs, fact.body.dog as string, keyed<DogAdded>());
        break;
      case 'dog-rested':
        latest(this.#rests, fact.body.dog as string, keyed<DogRested>());
        break;
      case 'level-stated':
        insertInOrder(this.#told, keyed<LevelStated>());
        break;
      case 'ground-put-away':
        latest(this.#groundsAway, fact.body.ground as string, keyed<GroundPutAway>());
        break;
      case 'layout-put-away':
        latest(this.#layoutsAway, fact.body.layout as string, keyed<LayoutPutAway>());
        break;
      case 'ground-added':
        latest(this.#grounds, fact.body.ground as string, keyed<GroundAdded>());
        break;
      case 'handler-added':
        latest(this.#handlers, fact.body.handler as string, keyed<HandlerAdded>());
        break;
      case 'layout-drawn':
        latest(this.#layouts, fact.body.layout as string, keyed<LayoutDrawn>());
        break;
      case 'goal-set':
        latest(this.#goals, fact.body.goal as string, keyed<GoalSet>());
        break;
      case 'session-planned':
        latest(this.#plans, fact.body.plan as string, keyed<SessionPlanned>());
        break;
      case 'session-opened':
        session().addOpened(keyed());
        break;
      case 'session-closed':
        session().addClosed(keyed());
        break;
      case 'session-focused':
        session().addFocused(keyed());
        break;
      case 'break-started':
        session().addBreakStarted(keyed());
        break;
      case 'break-taken':
        session().addBreak(keyed());
        break;
      case 'rep-recorded':
        this.#onRep(fact, (rep) => rep.addRecorded(keyed()));
        break;
      case 'rep-amended':
        this.#onRep(fact, (rep) => rep.addAmended(keyed()));
        break;
      case 'rep-ended':
        this.#onRep(fact, (rep) => rep.addEnded(keyed()));
        break;
      case 'rep-struck':
        this.#onRep(fact, (rep) => rep.addStruck(keyed()));
        break;
      case 'rep-restored':
        this.#onRep(fact, (rep) => rep.addRestored(keyed()));
        break;
      case 'voice-noted':
        this.#onRep(fact, (rep) => rep.addVoice(keyed()));
        break;
      case 'voice-dropped':
        this.#onRep(fact, (rep) => rep.addVoiceDropped(keyed()));
        break;
      case 'film-linked':
        this.#films.addLinked(keyed());
        break;
      case 'film-unlinked':
        this.#films.addUnlinked(keyed());
        break;
      case 'film-marked':
        this.#films.addMarked(keyed());
        break;
      case 'film-unmarked':
        this.#films.addUnmarked(keyed());
        break;
      case 'sound-heard':
        this.#sounds.addHeard(keyed());
        break;
      case 'sound-joined':
        this.#sounds.addJoined(keyed());
        break;
      case 'sound-dropped':
        this.#sounds.addDropped(keyed());
        break;
      default:
        this.#unknown += 1;
    }
  }

  #session(id: string): SessionThread {
    let thread = this.#sessions.get(id);
    if (thread === undefined) {
      thread = new SessionThread();
      this.#sessions.set(id, thread);
    }
    return thread;
  }

  #onRep(fact: Fact, act: (rep: RepThread) => void): void {
    const id = fact.body.rep as string;
    let thread = this.#reps.get(id);
    if (thread === undefined) {
      thread = new RepThread();
      this.#reps.set(id, thread);
    }
    const before = thread.session;
    act(thread);
    const { session } = thread;
    if (before !== null && before !== session) {
      const left = this.#session(before);
      left.reps.delete(thread);
      left.touched();
    }
    if (session === null) return;
    const home = this.#session(session);
    home.reps.add(thread);
    home.touched();
  }

  #folded(): TrainingRecord {
    const sessions: SessionRecord[] = [];
    let setAside = 0;
    for (const thread of this.#sessions.values()) {
      const session = thread.session();
      if (session !== null && this.#dogs.has(session.dog)) sessions.push(session);
      else setAside += thread.facts + [...thread.reps].reduce((so, rep) => so + rep.facts, 0);
    }
    for (const rep of this.#reps.values()) if (rep.session === null) setAside += rep.facts;
    for (const hung of [
      ...this.#goals.values(),
      ...this.#plans.values(),
      ...this.#rests.values(),
      ...this.#told,
    ]) {
      if (!this.#dogs.has(hung.body.dog)) setAside += 1;
    }
    sessions.sort((a, b) => compareKeys(a.orderKey, b.orderKey));
    const standing = new Set(sessions.map(({ session }) => session));
    const films = this.#films.folded({
      hasSession: (session) => standing.has(session),
      hasRep: (rep) => standing.has(this.#reps.get(rep)?.session ?? ''),
    });
    const sounds = this.#sounds.folded((session) => standing.has(session));
    setAside += films.setAside + sounds.setAside;
    return {
      dogs: mapped(this.#dogs, ({ body }) => ({
        dog: body.dog,
        name: body.name,
        bornMs: body.born === undefined ? null : Date.parse(`${body.born}T00:00:00Z`),
        sex: body.sex ?? null,
        breed: body.breed ?? null,
        rest: restOf(this.#rests.get(body.dog) ?? null),
        runSpeedMPerS: body.runSpeedMPerS ?? null,
      })),
      grounds: mapped(this.#grounds, ({ body: { ground, name, latDeg, lonDeg, note } }) => ({
        ground,
        name,
        at: latDeg === undefined || lonDeg === undefined ? null : { latDeg, lonDeg },
        note: note ?? null,
        isPutAway: isAway(this.#groundsAway.get(ground)),
      })),
      handlers: mapped(this.#handlers, ({ body }) => ({
        handler: body.handler,
        name: body.name,
        reactionS: body.reactionS ?? null,
      })),
      layouts: mapped(this.#layouts, ({ body, atMs }) => ({
        ...body,
        ground: body.ground ?? null,
        name: body.name ?? null,
        drawnAtMs: atMs,
        isPutAway: isAway(this.#layoutsAway.get(body.layout)),
      })),
      goals: mapped(this.#goals, ({ body }) => ({
        goal: body.goal,
        dog: body.dog,
        name: body.name,
        by: body.by ?? null,
        asks: body.asks,
      })),
      plans: mapped(this.#plans, plannedSession),
      told: this.#told.filter(({ body }) => this.#dogs.has(body.dog)).map(toldLevel),
      sessions,
      films: films.films,
      sounds: sounds.sounds,
      setAside,
      unknown: this.#unknown,
      facts: this.#ids.size,
      lastAtMs: this.#lastAtMs,
    };
  }
}

function isAway(said: Keyed<GroundPutAway | LayoutPutAway> | undefined): boolean {
  return said !== undefined && said.body.back !== true;
}

function restOf(rested: Keyed<DogRested> | null): DogRecord['rest'] {
  if (rested === null || rested.body.over === true) return null;
  const { until } = rested.body;
  return { untilMs: until === undefined ? null : Date.parse(`${until}T00:00:00Z`) };
}

function toldLevel({ body, key, atMs }: Keyed<LevelStated>): ToldRecord {
  return {
    dog: body.dog,
    skill: body.skill,
    farthestM: body.farthestM ?? null,
    ground: body.ground ?? null,
    isWithdrawn: body.withdrawn === true,
    orderKey: key,
    atMs,
  };
}

function plannedSession({ body, atMs }: Keyed<SessionPlanned>): PlanRecord {
  return {
    plan: body.plan,
    dog: body.dog,
    atMs,
    minutes: body.minutes,
    ground: body.ground ?? null,
    layout: body.layout ?? null,
    seed: body.seed ?? null,
    reps: body.reps.map(({ purpose, legs, locked = false }) => ({ purpose, legs, locked })),
    breaks: body.breaks ?? [],
  };
}

function latest<Body>(map: Map<string, Keyed<Body>>, id: string, fact: Keyed<Body>): void {
  map.set(id, later(map.get(id) ?? null, fact));
}

/** Each entry folded, in the order of ids, so that the order of arrival leaves no trace. */
function mapped<Body, Out>(
  map: ReadonlyMap<string, Keyed<Body>>,
  fold: (keyed: Keyed<Body>) => Out,
): Map<string, Out> {
  const byKey = [...map].sort(([, a], [, b]) => compareKeys(a.key, b.key));
  return new Map(byKey.map(([id, keyed]) => [id, fold(keyed)]));
}

/** The training record of a set of facts. */
export function foldRecord(facts: Iterable<Fact>): TrainingRecord {
  const builder = new RecordBuilder();
  builder.add(facts);
  return builder.record();
}
