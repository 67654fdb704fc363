import { append } from './kennel.ts';

/** Grounds and layouts go out of the way and come back; each resolves when that is on disk. */
export async function putGroundAway(ground: string, isAway: boolean): Promise<void> {
  await append([{ kind: 'ground-put-away', body: { ground, ...(isAway ? {} : { back: true }) } }]);
}

export async function putLayoutAway(layout: string, isAway: boolean): Promise<void> {
  await append([{ kind: 'layout-put-away', body: { layout, ...(isAway ? {} : { back: true }) } }]);
}
