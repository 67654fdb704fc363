import type { Tongue } from '../tongue.ts';

/** What can be wrong with a form's field. */
export type FieldFault =
  | 'name-empty'
  | 'name-long'
  | 'name-taken'
  | 'born-unreadable'
  | 'born-in-future'
  | 'born-too-long-ago';

const FAULTS: Readonly<Record<FieldFault, string>> = {
  'name-empty': 'Give the dog a name.',
  'name-long': 'That is longer than 60 letters; a shorter name will do.',
  'name-taken': 'There is a dog of that name already. Add something to tell them apart.',
  'born-unreadable': 'This is not a date. Day, month and year, or leave it empty.',
  'born-in-future': 'That day is yet to come.',
  'born-too-long-ago': 'That is more than 25 years ago. Check the year.',
};

/** Words of the kennel: who needs what today. */
export function dogsWords(t: Tongue) {
  return {
    title: 'Dogs',
    counted: (dogs: number): string => t.count(dogs, 'dog', 'dogs'),
    first: {
      teach: 'Tap what you saw. You are told what to ask next, drawn to scale, and how sure that is.',
      title: 'One dog, one skill, go',
      name: "Dog's name",
      skill: 'What to work on first',
      go: 'Go',
      demo: 'Look round an invented kennel',
      demoNote: 'Kept apart from your own record, gone with one tap.',
      kept: 'No account. Everything stays on this device.',
    },
    add: {
      title: 'Add a dog',
      name: 'Name',
      born: 'Born',
      bornHint: 'If known. A young dog is asked for less.',
      sex: 'Sex',
      sexes: { bitch: 'Bitch', dog: 'Dog', unsaid: 'Not said' },
      breed: 'Breed',
      optional: 'may be left empty',
      save: 'Add',
      cancel: 'Not now',
    },
    fault: (fault: FieldFault): string => FAULTS[fault],
    row: {
      work: (name: string): string => `Work ${name}`,
      carryOn: 'Carry on',
      carryOnWith: (name: string): string => `Carry on with ${name}`,
      start: 'Work',
      standing: (name: string): string => `What ${name} can do`,
      never: 'not worked yet',
      worked: (ago: string): string => `worked ${ago}`,
      open: 'a session is open',
      resting: (until: string | null): string => (until === null ? 'on rest' : `on rest until ${until}`),
      legs: (legs: number, sessions: number): string =>
        `${t.count(legs, 'leg', 'legs')} in ${t.count(sessions, 'session', 'sessions')}`,
      /** Of a dog that was worked this week: when it last was stands beside its name. */
      week: (minutes: number): string =>
        minutes < 1
          ? 'under a minute this week'
          : `${t.count(Math.round(minutes), 'minute', 'minutes')} this week`,
      slips: (skill: string, then: string, now: string): string =>
        `${skill} is slipping: ${then} then, ${now} in 100 now`,
      nothingSlips: 'Nothing is slipping',
      due: (skill: string, ago: string): string => `${skill}, ${ago}`,
      lastWorked: 'Last worked',
      skills: 'Longest ago',
      load: 'This week',
    },
    setAside: (n: number): string =>
      `${t.count(n, 'entry is', 'entries are')} set aside, because what they belong to is not in this record yet.`,
  };
}

export type DogsWords = ReturnType<typeof dogsWords>;
