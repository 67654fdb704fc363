import type { CautionWords } from './cautions.ts';
import type { Tongue } from './tongue.ts';

/** One thing to mind, with the figure it hangs on and the limit it is held against. */
export interface ToldCareCaution {
  readonly code:
    | 'heat-stop'
    | 'heat-short'
    | 'heat-care'
    | 'heat-signs'
    | 'heat-after-work'
    | 'cool-first'
    | 'mild-days-too'
    | 'in-the-sun'
    | 'cold'
    | 'cold-water'
    | 'puppy'
    | 'young-joints'
    | 'old-dog'
    | 'age-not-known'
    | 'load-minutes'
    | 'load-jumps'
    | 'water'
    | 'whistle-at-the-ear'
    | 'thrown'
    | 'launched'
    | 'livestock'
    | 'roads'
    | 'law';
  readonly defersTo: 'vet' | 'landowner' | 'rules';
  readonly is?: number | undefined;
  readonly limit?: number | undefined;
  readonly reps?: number | undefined;
  readonly minutes?: number | undefined;
  readonly lineM?: number | undefined;
}

/** Whose word goes before ours, said at the end of every caution. */
const DEFERS: Readonly<Record<ToldCareCaution['defersTo'], string>> = {
  vet: 'Your vet’s word goes first.',
  landowner: 'The landowner’s word goes first.',
  rules: 'The law and local rules go first.',
};

/** Words of care: what to mind, each sentence with whose word goes first. */
export function careWords(t: Tongue, cautions: CautionWords) {
  const degrees = (c: number | undefined): string => (c === undefined ? 'This air' : `${t.number(c)} °C`);
  const figure = (value: number | undefined): string => (value === undefined ? 'so many' : t.number(value));
  const many = (value: number | undefined): string => (value === undefined ? 'Many' : t.number(value));
  const few = (value: number | undefined): string => (value === undefined ? 'few' : t.number(value));
  /** A caution of the short list as one sentence, its title first. */
  const inShort = (code: CautionWords['list'][number]['code']): string => {
    const { title, text } = cautions.of(code);
    return `${title}: ${text.charAt(0).toLowerCase()}${text.slice(1)}`;
  };

  const SAID: Readonly<Record<ToldCareCaution['code'], (one: ToldCareCaution) => string>> = {
    'heat-stop': ({ is }) =>
      `${degrees(is)}: too hot to work a dog. Leave it for a cooler hour or another day.`,
    'heat-short': ({ is, reps, minutes }) =>
      `${degrees(is)}: ${few(reps)} reps and ${few(minutes)} minutes at the very most, or none; shade and water between.`,
    'heat-care': ({ is }) =>
      `${degrees(is)}: warm. Work is what makes most dogs ill from heat, far more often than cars. Short lines, shade, water.`,
    'heat-signs': () =>
      'Stop and cool at panting that does not settle, a wide curled tongue, slowing, seeking shade, refusing a retrieve. Wobbling, vomiting, collapse or a fit is an emergency.',
    'heat-after-work': () =>
      'A dog’s temperature goes on rising for some minutes after the work stops. Watch it till it settles.',
    'cool-first': () =>
      'A dog ill from heat is cooled first and driven second: cold water for a young healthy dog, water on the coat and moving air for an old or ailing one. Wet towels laid on do not do it. Ring the vet meanwhile.',
    'mild-days-too': ({ limit }) =>
      `Mild is not safe: half of the dogs treated for heat in one large record fell ill on days under ${figure(limit)} °C.`,
    'in-the-sun': ({ limit }) => `Full sun adds up to ${figure(limit)} °C to what the shade feels like.`,
    cold: ({ is }) =>
      `${degrees(is)}: warm up before lines and jumps, keep a waiting dog dry and out of the wind, look at the feet.`,
    'cold-water': ({ is }) => `Water of ${degrees(is)}: few water retrieves, and dry the dog between.`,
    puppy: ({ limit, minutes }) =>
      `Under ${figure(limit)} months: ${few(minutes)} minutes at most, in short spells, and play counts.`,
    'young-joints': ({ limit, lineM }) =>
      `Under ${figure(limit)} months: no fences, no ${lineM === undefined ? 'long line' : `line over ${t.lengthInWords(lineM)}`}, no sharp turns on hard ground.`,
    'old-dog': () => 'An old dog: longer warming up, less of everything, and it may not hear you.',
    'age-not-known': () =>
      'The dog’s age is not told: what a young or an old dog must be spared is not held here.',
    'load-minutes': ({ is, limit }) =>
      `${many(is)} minutes this week, over ${figure(limit)}: a day off teaches too.`,
    'load-jumps': ({ is, limit }) => `${many(is)} jumps this week, over ${figure(limit)}: leave the fences.`,
    water: () =>
      'Look into water before the dog goes in: current, banks it can climb, wire, scum that may be poisonous algae.',
    'whistle-at-the-ear': () => inShort('whistle'),
    thrown: () =>
      `Throw a ${t.dummy} so that no dog has to leap or twist for it, and never at a dog or a person.`,
    launched: () => inShort('launched'),
    livestock: () => inShort('livestock'),
    roads: () => inShort('roads'),
    law: () => 'Whose ground, which season, which game, leads, launchers, noise: ask before you go.',
  };

  return {
    /** What is to be minded, and whose word goes first. */
    caution: (one: ToldCareCaution): string => `${SAID[one.code](one)} ${DEFERS[one.defersTo]}`,
  };
}

export type CareWords = ReturnType<typeof careWords>;
