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
