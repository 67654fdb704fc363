import type { Skill } from '@sedgeline/engine/ability';
import type { TapFact } from '@sedgeline/projections';
import { append, newId } from './kennel.ts';

/** What a handler says before he starts. */
export interface SessionChoice {
  readonly dog: string;
  /** A ground on record, a new one by name, or none. */
  readonly ground: { readonly known: string } | { readonly named: string } | null;
  readonly focus: Skill | null;
}

/** Opens a session; resolves with its id when it is on disk (or kept in memory). */
export async function openSession({ dog, ground, focus }: SessionChoice): Promise<string> {
  const session = newId();
  const facts: TapFact[] = [];
  let place: string | null = null;
  if (ground !== null && 'known' in ground) place = ground.known;
  if (ground !== null && 'named' in ground) {
    place = newId();
    facts.push({ kind: 'ground-added', body: { ground: place, name: ground.named } });
  }
  facts.push({
    kind: 'session-opened',
    body: place === null ? { session, dog } : { session, dog, ground: place },
  });
  if (focus !== null) facts.push({ kind: 'session-focused', body: { session, skill: focus } });
  await append(facts);
  return session;
}

/** What a handler says before several dogs are worked in turn. */
export interface TurnsChoice {
  /** In the order of their turns. */
  readonly dogs: readonly string[];
  readonly skill: Skill;
  readonly ground: string | null;
}

/** Opens a session for each dog, all of one class, in one write; resolves with the first. */
export async function openTurns({ dogs, skill, ground }: TurnsChoice): Promise<string> {
  const round = newId();
  const sessions = dogs.map((dog) => ({ session: newId(), dog }));
  const place = ground === null ? {} : { ground };
  await append(
    sessions.flatMap(({ session, dog }) => [
      { kind: 'session-opened', body: { session, dog, class: round, ...place } },
      { kind: 'session-focused', body: { session, skill } },
    ]),
  );
  return sessions[0]?.session ?? '';
}

/** Ends the sessions of all the dogs worked in turn, in one write. */
export async function closeTurns(sessions: readonly string[]): Promise<void> {
  await append(sessions.map((session) => ({ kind: 'session-closed', body: { session } })));
}
