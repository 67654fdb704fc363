import type { Skill, ToldGround } from '@sedgeline/engine/ability';
import { append } from './kennel.ts';

/** What a handler tells of one skill; what is `null` was not said. A farthest of 0 is "not yet". */
export interface ToldAnswer {
  readonly farthestM: number | null;
  readonly ground: ToldGround | null;
}

/** Something is told of a dog, or with `null` taken back; resolves when that is on disk. */
export async function tellLevel(dog: string, skill: Skill, answer: ToldAnswer | null): Promise<void> {
  const told =
    answer === null
      ? { withdrawn: true }
      : {
          ...(answer.farthestM === null ? {} : { farthestM: answer.farthestM }),
          ...(answer.ground === null ? {} : { ground: answer.ground }),
        };
  await append([{ kind: 'level-stated', body: { dog, skill, ...told } }]);
}
