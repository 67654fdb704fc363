import { append } from './kennel.ts';

/** A dog rests until a date (empty: no end is set), or with `null` is back at work; resolves when that is on disk. */
export async function restDog(dog: string, until: string | null): Promise<void> {
  const how = until === null ? { over: true } : until === '' ? {} : { until };
  await append([{ kind: 'dog-rested', body: { dog, ...how } }]);
}
