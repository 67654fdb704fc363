import type { SoundHeard, SoundJoined } from '@sedgeline/journal';
import type { FilmRecord } from '../film/film-record.ts';
import type { RepRecord, SessionRecord, TrainingRecord } from '../record/training-record.ts';
import type { TapFact } from '../tap-fact.ts';
import { stopConditionsOfDog } from '../whistle/stop-conditions-of-dog.ts';
import { timedLegs } from './timed-legs.ts';
import { type WhistleTiming, whistleTiming } from './whistle-timing.ts';

/** A heard moment lies within this of the true one (the aim of docs/sound-study.md). */
const HEARD_WITHIN_S = 0.05;

/** What is kept of a sound: what was heard, and the joins that the handler let stand. */
export interface KeptSound {
  readonly heard: SoundHeard;
  readonly joins: SoundJoined['joins'];
}

/** The film of the session that a sound was heard in: one of the same name and size. */
export function filmOfSound(
  { films }: TrainingRecord,
  { session, name, bytes }: SoundHeard,
): FilmRecord | null {
  return (
    films.find(
      (film) =>
        film.isLinked &&
        film.session === session &&
        film.name === name &&
        film.bytes === (bytes ?? Number.NaN),
    ) ?? null
  );
}

/**
 * The facts that keep a sound: what was heard, the joins, and what these tell. Where the sound is that of a film of the session, each
 * stop whistle is marked on it, unless the rep has a whistle mark already; where its marks say when the dog was sent or halted, the
 * leg gets its latency and the place at which it was blown.
 */
export function keepSoundFacts(
  record: TrainingRecord,
  { heard, joins }: KeptSound,
  newId: () => string,
): readonly TapFact[] {
  const { sound, session } = heard;
  const facts: TapFact[] = [
    { kind: 'sound-heard', body: { ...heard } },
    { kind: 'sound-joined', body: { sound, session, joins } },
  ];
  const film = filmOfSound(record, heard);
  if (film === null) return facts;
  for (const [rep, own] of stopsByRep(record, joins)) {
    if (!film.marks.some((mark) => mark.rep === rep.rep && mark.what === 'whistle'))
      facts.push(...own.map(({ atS }) => whistleMark(film.film, rep.rep, atS, newId())));
    const legs = timedLegs(
      rep.legs,
      own.map((join) => join.timing(film)),
    );
    if (legs !== null) facts.push({ kind: 'rep-amended', body: { rep: rep.rep, legs } });
  }
  return facts;
}

interface JoinedStop {
  readonly atS: number;
  readonly timing: (film: FilmRecord) => WhistleTiming;
}

/** The stops of each rep that have a whistle joined to them. */
function stopsByRep(
  record: TrainingRecord,
  joins: SoundJoined['joins'],
): ReadonlyMap<RepRecord, readonly JoinedStop[]> {
  const found = new Map<RepRecord, JoinedStop[]>();
  for (const { rep: id, leg, atS } of joins) {
    const at = repAndSession(record, id);
    const asked = leg === undefined ? undefined : at?.rep.legs[leg];
    if (at === null || leg === undefined || asked?.skill !== 'stop') continue;
    const conditions = stopConditionsOfDog(record, at.session.dog, at.session);
    const stop = {
      atS,
      timing: (film: FilmRecord) => whistleTiming({ rep: id, leg, atS }, asked, film, conditions),
    };
    found.set(at.rep, [...(found.get(at.rep) ?? []), stop]);
  }
  return found;
}

function repAndSession(
  { sessions }: TrainingRecord,
  id: string,
): { readonly rep: RepRecord; readonly session: SessionRecord } | null {
  for (const session of sessions) {
    const rep = session.reps.find((one) => one.rep === id);
    if (rep !== undefined) return { rep, session };
  }
  return null;
}

function whistleMark(film: string, rep: string, atS: number, mark: string): TapFact {
  const body = { mark, film, rep, what: 'whistle', atS, frameS: HEARD_WITHIN_S, heard: true };
  return { kind: 'film-marked', body };
}
