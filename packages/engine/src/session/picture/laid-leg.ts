import type { Ask, Skill } from '../../ability/index.ts';

/** One leg of a chain to be laid out and drawn. */
export interface LaidLeg {
  readonly skill: Skill;
  readonly ask: Ask;
}

const CAST_SIDES = { 'cast-left': 'left', 'cast-right': 'right', 'cast-back': 'back' } as const;

/** The side of a cast skill, `null` for any other skill. */
export function castSide(skill: Skill): 'left' | 'right' | 'back' | null {
  return skill in CAST_SIDES ? CAST_SIDES[skill as keyof typeof CAST_SIDES] : null;
}
