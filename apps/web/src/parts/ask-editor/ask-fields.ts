import { ASK_RANGES, type Ask, HANDLER_PLACES, type Skill, TEMPTATIONS } from '@sedgeline/engine/ability';

/** A number that is stepped: by a little, and by more. Steps and range are in the record's units. */
export interface NumberField {
  readonly field: keyof typeof ASK_RANGES;
  readonly small: number;
  readonly big: number | null;
}

const METRES = { small: 1, big: 5 } as const;
const NUMBERS: Readonly<Record<keyof typeof ASK_RANGES, Omit<NumberField, 'field'> | 'scale'>> = {
  distanceM: METRES,
  wayFraction: { small: 0.05, big: 0.2 },
  castM: METRES,
  turnDeg: { small: 5, big: 15 },
  gapDeg: { small: 5, big: 15 },
  waitS: { small: 1, big: 5 },
  otherDummies: { small: 1, big: null },
  crew: { small: 1, big: null },
  windAcrossMPerS: { small: 1, big: null },
  cover: 'scale',
  distraction: 'scale',
  obstacle: 'scale',
};

/** How a field of the ask is set: by steps, by one of a few words, or by yes and no. */
export type AskControl =
  | ({ readonly by: 'steps' } & NumberField)
  | {
      readonly by: 'words';
      readonly field: 'temptation';
      readonly values: readonly NonNullable<Ask['temptation']>[];
    }
  | {
      readonly by: 'words';
      readonly field: 'handlerPlace';
      readonly values: readonly NonNullable<Ask['handlerPlace']>[];
    }
  | { readonly by: 'scale'; readonly field: 'cover' | 'distraction' | 'obstacle' }
  | { readonly by: 'seen'; readonly field: 'blind' };

/** Fields in the order in which they matter on the ground: where, what draws, what lies about, what lies between. */
const ORDER: readonly (keyof Ask)[] = [
  'distanceM',
  'wayFraction',
  'castM',
  'turnDeg',
  'temptation',
  'blind',
  'handlerPlace',
  'cover',
  'obstacle',
  'otherDummies',
  'gapDeg',
  'waitS',
  'distraction',
  'windAcrossMPerS',
  'crew',
];

function controlOf(field: keyof Ask): AskControl {
  if (field === 'temptation') return { by: 'words', field, values: TEMPTATIONS };
  if (field === 'handlerPlace') return { by: 'words', field, values: HANDLER_PLACES };
  if (field === 'blind') return { by: 'seen', field };
  const number = NUMBERS[field];
  if (number === 'scale') return { by: 'scale', field: field as 'cover' | 'distraction' | 'obstacle' };
  return { by: 'steps', field, ...number };
}

/** Every control for a leg of a skill; the cast's own and the cue's own are left out where they mean nothing. */
export function askControls(skill: Skill): readonly AskControl[] {
  const isCast = skill.startsWith('cast-');
  const isCue = isCast || skill === 'stop';
  return ORDER.filter((field) => {
    if (field === 'castM' || field === 'turnDeg') return isCast;
    return field === 'wayFraction' ? isCue : true;
  }).map(controlOf);
}

/** The value one step away, kept within the range of the field and free of the dust of sums. */
export function stepped(field: keyof typeof ASK_RANGES, value: number, by: number): number {
  const [least, greatest] = ASK_RANGES[field];
  return Math.min(greatest, Math.max(least, Math.round((value + by) * 1000) / 1000));
}
