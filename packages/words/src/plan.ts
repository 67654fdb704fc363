import type { Tongue } from './tongue.ts';

/** Every code of what a handler should have in mind for a planned session. */
export type PlanCautionCode =
  | 'heat'
  | 'joints'
  | 'whistle'
  | 'launched'
  | 'livestock'
  | 'roads'
  | 'ask'
  | 'too-hot-to-work'
  | 'age-not-known'
  | 'nothing-known-yet'
  | 'long-lay-off'
  | 'new-ground'
  | 'little-time'
  | 'little-kit'
  | 'locks-let-go'
  | 'on-rest';

/** A caution with its figures, any of which may be missing. */
export interface PlanCaution {
  readonly code: PlanCautionCode;
  readonly airC?: number | undefined;
  readonly humidityPct?: number | undefined;
  readonly ageMonths?: number | undefined;
  readonly count?: number | undefined;
}

/** What a rep of a plan is for. */
export type PlanPurpose = 'check' | 'build' | 'vary' | 'clean' | 'easier' | 'finish';

/** Something to be done on the ground before a rep. */
export interface PlanErrand {
  readonly do: 'throw' | 'place' | 'lift' | 'walk';
  readonly thing?: string | undefined;
  readonly metres?: number | undefined;
}

const PURPOSES: Readonly<Record<PlanPurpose, string>> = {
  check: 'Check',
  build: 'Build',
  vary: 'Vary',
  clean: 'Straight through',
  easier: 'Easier',
  finish: 'Finish',
};

/** Things of a layout keep their names from rep to rep; a name that ends in a number is another of its kind. */
function thingName(t: Tongue, thing = ''): string {
  return thing.includes('post') ? 'the post' : `a ${t.dummy}`;
}

/** A planned session in words: a page that can be walked. */
export function planWords(t: Tongue) {
  const warm = ({ airC, humidityPct }: PlanCaution): string => {
    if (airC === undefined) return 'It is hot';
    const humid = humidityPct === undefined ? '' : ` and ${t.number(humidityPct)} % humidity`;
    return `${t.number(airC)} °C${humid}`;
  };
  const cautions: Readonly<Record<PlanCautionCode, (caution: PlanCaution) => string>> = {
    heat: (c) =>
      `${warm(c)}: keep it short, with shade and water. Heavy panting or a stagger means stop, cool the dog and ring the vet.`,
    joints: () =>
      'A young dog: no jumps, no long hard runs, and stop while it is keen. Ask your vet what yours may do.',
    whistle: () => 'Never blow beside a dog or a person: it hurts ears for good.',
    launched: () => `Launched ${t.dummies}: never at or over a dog or a person.`,
    livestock: () => 'Never among stock, and not in nesting time.',
    roads: () => 'No line towards a road, rail or wire; look into the water before the dog goes in.',
    ask: () => 'The vet for the dog, the landowner for the ground: their word goes before any plan.',
    'too-hot-to-work': (c) =>
      `${warm(c)}: too hot to work a dog. No plan for today; early morning or another day. The vet's word goes first.`,
    'age-not-known': () => 'The age is not on record, so nothing here is held back for young joints.',
    'nothing-known-yet': (c) =>
      c.count
        ? `Only ${t.count(c.count, 'leg is', 'legs are')} on record: these chances are mostly those of any dog.`
        : 'Nothing is on record yet: this begins at the easy end, and the chances are those of any dog.',
    'long-lay-off': (c) =>
      `${c.count === undefined ? 'Some weeks' : t.count(c.count, 'day', 'days')} since the last work: expect some rust, and be glad of easy things.`,
    'new-ground': () => 'New ground for this dog: walk it first, and take a step down from home.',
    'little-time': (c) =>
      c.count === 0
        ? 'There is not time for one rep: play, and come back with more.'
        : 'There is little time: one or two good ones, and home.',
    'little-kit': () => `The ${t.dummies} and posts at hand leave some things out.`,
    'on-rest': (c) =>
      `${c.count === undefined ? 'On rest' : `On rest for ${t.count(c.count, 'day', 'days')} more`}: no plan. What the vet said goes first, walks to heel among it.`,
    'locks-let-go': (c) =>
      `${c.count === undefined ? 'Some locked reps' : t.count(c.count, 'locked rep', 'locked reps')} could not be had in this time, with this kit or at this age, and ${c.count === 1 ? 'was' : 'were'} let go.`,
  };
  const errand = ({ do: what, thing, metres }: PlanErrand): string => {
    const at = metres === undefined ? '' : ` at ${t.length(metres)}`;
    switch (what) {
      case 'walk':
        return metres === undefined ? 'walk' : `walk ${t.length(metres)}`;
      case 'lift':
        return `take up ${thingName(t, thing)}${at}`;
      case 'place':
        return `put out ${thingName(t, thing)}${at}`;
      case 'throw':
        return `throw ${thingName(t, thing)}${metres === undefined ? '' : ` to ${t.length(metres)}`}`;
    }
  };
  const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
  const minutes = (n: number): string => t.count(Math.round(n), 'minute', 'minutes');
  return {
    title: (dog: string, of: number): string => `${dog}: a session in ${minutes(of)}`,
    empty: 'No session is planned.',
    purpose: (purpose: PlanPurpose): string => PURPOSES[purpose],
    caution: (caution: PlanCaution): string => cautions[caution.code](caution),
    /** "Walk 82 m, put out a dummy at 41 m." Nothing where nothing is to be done. */
    before: (errands: readonly PlanErrand[]): string =>
      errands.length === 0 ? '' : `${capital(t.list(errands.map(errand)))}.`,
    nothingToLay: 'Nothing to lay.',
    else: (rep: string): string => `If it goes wrong: ${rep}`,
    takesBreak: (n: number): string => `Break, ${minutes(n)}: play, water, shade.`,
    takes: (p50: number, p90: number): string =>
      `It takes about ${minutes(p50)}, laying, walking and breaks among them; ${minutes(p90)} if things go slowly.`,
    allKept: 'Every rule of the trade is kept.',
    notKept: 'Not kept:',
    inMind: 'Have in mind:',
  };
}

export type PlanWords = ReturnType<typeof planWords>;
