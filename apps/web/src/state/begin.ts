import type { Skill } from '@sedgeline/engine/ability';
import { append, newId } from './kennel.ts';
import { useKennel } from './kennel-store.ts';

/** What is said of a new dog. */
export interface DogSaid {
  readonly name: string;
  readonly born?: string;
  readonly sex?: string;
  readonly breed?: string;
}

/** Adds a dog; resolves when it is on disk (or kept in memory). */
export async function addDog(said: DogSaid): Promise<void> {
  await append([{ kind: 'dog-added', body: { dog: newId(), ...said } }]);
}

/** The first open: a dog, a session and what it is about, in one write; resolves with the session. */
export async function startFirst(name: string, skill: Skill): Promise<string> {
  const dog = newId();
  const session = newId();
  await append([
    { kind: 'dog-added', body: { dog, name } },
    { kind: 'session-opened', body: { session, dog } },
    { kind: 'session-focused', body: { session, skill } },
  ]);
  return session;
}

/** Where work with a dog goes on: its open session, or the choice of a new one. */
export function workAddress(dog: string): string {
  const open = useKennel.getState().dogs?.dogs.find((row) => row.dog === dog)?.openSession;
  return open ? `/work/${open}` : `/work/with/${encodeURIComponent(dog)}`;
}
