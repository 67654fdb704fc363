/**
 * A body of each kind with its required fields alone, and one with every field of the manual (`docs/journal.md`), written
 * out by hand from it. Invented dogs and places.
 */
const leg = { skill: 'stop', ask: {}, grade: 'good' };
const fullAsk = {
  distanceM: 60,
  wayFraction: 0.5,
  temptation: 'thrown-dummy',
  handlerPlace: 'beside',
  cover: 1.5,
  distraction: 2,
  turnDeg: 90,
  castM: 30,
  otherDummies: 2,
  gapDeg: 45,
  blind: true,
  waitS: 20,
  obstacle: 1,
  windAcrossMPerS: 4,
  crew: 3,
};
const fullLeg = {
  skill: 'stop',
  ask: fullAsk,
  grade: 'fair',
  cause: 'handler',
  latencyS: 1.2,
  note: 'late',
  planned: fullAsk,
};

export const BODIES: Readonly<Record<string, { readonly least: object; readonly full: object }>> = {
  'handler-added': {
    least: { handler: 'h1', name: 'Ada' },
    full: { handler: 'h1', name: 'Ada', reactionS: 0.3 },
  },
  'dog-added': {
    least: { dog: 'd1', name: 'Wren' },
    full: {
      dog: 'd1',
      name: 'Wren',
      born: '2024-05-02',
      sex: 'bitch',
      breed: 'Labrador',
      weightKg: 26,
      runSpeedMPerS: 7,
    },
  },
  'ground-added': {
    least: { ground: 'g1', name: 'Lower meadow' },
    full: { ground: 'g1', name: 'Lower meadow', latDeg: -12.5, lonDeg: 170, note: 'wet in spring' },
  },
  'layout-drawn': {
    least: { layout: 'l1', handlerAt: { eastM: 0, northM: 0 }, things: [] },
    full: {
      layout: 'l1',
      name: 'Wall end',
      ground: 'g1',
      handlerAt: { eastM: 0, northM: 0 },
      sendFrom: { eastM: 1, northM: -2 },
      things: [
        { thing: 't1', kind: 'dummy', eastM: 3, northM: 40, how: 'placed', label: 'left', blind: true },
      ],
      windFromDeg: 270,
      windMPerS: 3,
    },
  },
  'session-opened': {
    least: { session: 's1', dog: 'd1' },
    full: {
      session: 's1',
      dog: 'd1',
      handler: 'h1',
      ground: 'g1',
      layout: 'l1',
      weather: { airC: 12, humidityPct: 70, windMPerS: 3, windFromDeg: 270 },
      plan: 'p1',
      class: 'c1',
    },
  },
  'rep-recorded': {
    least: { rep: 'r1', session: 's1', legs: [leg] },
    full: {
      rep: 'r1',
      session: 's1',
      legs: [fullLeg, leg],
      clean: false,
      layout: 'l1',
      dummiesOut: 2,
      reward: ['marker', 'food', 'play', 'retrieve', 'praise'],
      gotItAnyway: false,
      expectation: 'hangs-back',
      note: 'keen',
      chain: [{ skill: 'line', ask: fullAsk }],
      purpose: 'build',
      planRep: 3,
      fromMemory: true,
    },
  },
  'break-taken': { least: { session: 's1', minutes: 3 }, full: { session: 's1', minutes: 3 } },
  'session-closed': { least: { session: 's1' }, full: { session: 's1', note: 'ended well' } },
  'rep-amended': {
    least: { rep: 'r1' },
    full: {
      rep: 'r1',
      legs: [leg],
      clean: true,
      expectation: 'none',
      note: 'ok',
      reward: ['food'],
      gotItAnyway: true,
      undoes: 'f0',
    },
  },
  'rep-struck': { least: { rep: 'r1' }, full: { rep: 'r1', why: 'wrong dog', undoes: 'f0' } },
  'goal-set': {
    least: { goal: 'o1', dog: 'd1', name: 'Open ground', asks: [] },
    full: {
      goal: 'o1',
      dog: 'd1',
      name: 'Open ground',
      asks: [{ skill: 'line', ask: fullAsk, chance: 0.8 }],
      by: '2026-09-01',
    },
  },
  'session-focused': { least: { session: 's1', skill: 'stop' }, full: { session: 's1', skill: 'stop' } },
  'break-started': { least: { session: 's1', minutes: 3 }, full: { session: 's1', minutes: 3 } },
  'rep-ended': { least: { rep: 'r1' }, full: { rep: 'r1', ended: false, undoes: 'f0' } },
  'rep-restored': { least: { rep: 'r1', undoes: 'f0' }, full: { rep: 'r1', undoes: 'f0' } },
  'voice-noted': {
    least: { voice: 'v1', rep: 'r1', lengthS: 4.2, bytes: 20480, sha256: 'ab12' },
    full: { voice: 'v1', rep: 'r1', lengthS: 4.2, bytes: 20480, sha256: 'ab12', type: 'audio/webm' },
  },
  'voice-dropped': { least: { voice: 'v1', rep: 'r1' }, full: { voice: 'v1', rep: 'r1' } },
  'film-linked': {
    least: { film: 'm1', session: 's1', name: 'hedge.mp4', bytes: 2_147_483_648 },
    full: {
      film: 'm1',
      session: 's1',
      name: 'hedge.mp4',
      bytes: 2_147_483_648,
      contentHash: 'ab12',
      lengthS: 7200.5,
      startsAt: '2026-03-01T09:00:00+01:00',
    },
  },
  'film-unlinked': {
    least: { film: 'm1', session: 's1' },
    full: { film: 'm1', session: 's1', stands: true },
  },
  'film-marked': {
    least: { mark: 'k1', film: 'm1', rep: 'r1', what: 'whistle', atS: 12.433, frameS: 0.033 },
    full: { mark: 'k1', film: 'm1', rep: 'r1', what: 'pick-up', atS: 12.433, frameS: 0.033, heard: true },
  },
  'film-unmarked': {
    least: { mark: 'k1', film: 'm1', rep: 'r1' },
    full: { mark: 'k1', film: 'm1', rep: 'r1', stands: true },
  },
  'sound-heard': {
    least: {
      sound: 'n1',
      session: 's1',
      from: 'microphone',
      name: 'Microphone',
      lengthS: 900,
      whistles: [],
      clicks: [],
    },
    full: {
      sound: 'n1',
      session: 's1',
      from: 'file',
      name: 'hedge.mp4',
      lengthS: 900.25,
      startsAt: '2026-03-01T09:00:00+01:00',
      bytes: 20480,
      sha256: 'ab12',
      whistles: [{ startS: 12.5, endS: 13.1, kind: 'long', pitchHz: 2950, sureness: 0.98 }],
      clicks: [{ timeS: 14.2, sureness: 0.9 }],
    },
  },
  'sound-joined': {
    least: { sound: 'n1', session: 's1', joins: [] },
    full: { sound: 'n1', session: 's1', joins: [{ rep: 'r1', leg: 1, atS: 12.5, by: 'handler' }] },
  },
  'sound-dropped': {
    least: { sound: 'n1', session: 's1' },
    full: { sound: 'n1', session: 's1', stands: true },
  },
  'dog-rested': { least: { dog: 'd1' }, full: { dog: 'd1', until: '2026-06-01', over: false } },
  'level-stated': {
    least: { dog: 'd1', skill: 'stop' },
    full: { dog: 'd1', skill: 'stop', farthestM: 40, ground: 'known', withdrawn: false },
  },
  'ground-put-away': { least: { ground: 'g1' }, full: { ground: 'g1', back: true } },
  'layout-put-away': { least: { layout: 'l1' }, full: { layout: 'l1', back: true } },
  'session-planned': {
    least: { plan: 'p1', dog: 'd1', minutes: 15, reps: [] },
    full: {
      plan: 'p1',
      dog: 'd1',
      minutes: 15,
      reps: [{ purpose: 'build', legs: [{ skill: 'line', ask: fullAsk }], locked: true }],
      breaks: [{ afterRep: 6, minutes: 3 }],
      ground: 'g1',
      layout: 'l1',
      seed: 7,
    },
  },
};

/** Ranges of the numbers of an ask, from the manual. */
export const ASK_RANGES: Readonly<Record<string, readonly [number, number]>> = {
  distanceM: [0, 400],
  wayFraction: [0, 1],
  cover: [0, 3],
  distraction: [0, 3],
  turnDeg: [0, 180],
  castM: [0, 150],
  otherDummies: [0, 6],
  gapDeg: [0, 180],
  waitS: [0, 300],
  obstacle: [0, 3],
  windAcrossMPerS: [0, 15],
  crew: [0, 12],
};

const rep = (legs: unknown, more: object = {}) => ({ rep: 'r1', session: 's1', legs, ...more });

/** Bodies with one thing wrong, and what should be said of it. */
export const BROKEN_BODIES: readonly {
  readonly kind: string;
  readonly body: unknown;
  readonly code: string;
  readonly field: string;
}[] = [
  { kind: 'dog-added', body: { dog: '', name: 'Wren' }, code: 'FIELD_RANGE', field: 'body.dog' },
  {
    kind: 'dog-added',
    body: { dog: 'd', name: 'W', born: '2026-02-30' },
    code: 'TIME_RANGE',
    field: 'body.born',
  },
  {
    kind: 'dog-added',
    body: { dog: 'd', name: 'W', born: '1/2/2026' },
    code: 'TIME_FORMAT',
    field: 'body.born',
  },
  {
    kind: 'dog-added',
    body: { dog: 'd', name: 'W', weightKg: '26' },
    code: 'FIELD_TYPE',
    field: 'body.weightKg',
  },
  {
    kind: 'dog-added',
    body: { dog: 'd', name: 'W', weightKg: -1 },
    code: 'FIELD_RANGE',
    field: 'body.weightKg',
  },
  {
    kind: 'ground-added',
    body: { ground: 'g', name: 'M', latDeg: 90.1 },
    code: 'FIELD_RANGE',
    field: 'body.latDeg',
  },
  {
    kind: 'layout-drawn',
    body: { layout: 'l', handlerAt: { eastM: 0 }, things: [] },
    code: 'FIELD_MISSING',
    field: 'body.handlerAt.northM',
  },
  {
    kind: 'layout-drawn',
    body: {
      layout: 'l',
      handlerAt: { eastM: 0, northM: 0 },
      things: [
        { thing: 'a', kind: 'post', eastM: 0, northM: 9 },
        { thing: 'b', kind: 'tree', eastM: 0, northM: 9 },
      ],
    },
    code: 'FIELD_VALUE',
    field: 'body.things[1].kind',
  },
  { kind: 'rep-recorded', body: rep({}), code: 'FIELD_TYPE', field: 'body.legs' },
  { kind: 'rep-recorded', body: rep([[]]), code: 'FIELD_TYPE', field: 'body.legs[0]' },
  { kind: 'rep-recorded', body: rep([{ ...leg, ask: [] }]), code: 'FIELD_TYPE', field: 'body.legs[0].ask' },
  {
    kind: 'rep-recorded',
    body: rep([leg, { ...leg, grade: 'great' }]),
    code: 'FIELD_VALUE',
    field: 'body.legs[1].grade',
  },
  {
    kind: 'rep-recorded',
    body: rep([{ ...leg, grade: 3 }]),
    code: 'FIELD_TYPE',
    field: 'body.legs[0].grade',
  },
  {
    kind: 'rep-recorded',
    body: rep([{ ...leg, skill: 'sit' }]),
    code: 'FIELD_VALUE',
    field: 'body.legs[0].skill',
  },
  {
    kind: 'rep-recorded',
    body: rep([{ ...leg, cause: 'dog' }]),
    code: 'FIELD_VALUE',
    field: 'body.legs[0].cause',
  },
  {
    kind: 'rep-recorded',
    body: rep([{ ...leg, latencyS: 60.1 }]),
    code: 'FIELD_RANGE',
    field: 'body.legs[0].latencyS',
  },
  {
    kind: 'rep-recorded',
    body: rep([{ ...leg, latencyS: -0.1 }]),
    code: 'FIELD_RANGE',
    field: 'body.legs[0].latencyS',
  },
  {
    kind: 'rep-recorded',
    body: rep([{ ...leg, ask: { blind: 1 } }]),
    code: 'FIELD_TYPE',
    field: 'body.legs[0].ask.blind',
  },
  {
    kind: 'rep-recorded',
    body: rep([{ ...leg, ask: { temptation: 'rabbit' } }]),
    code: 'FIELD_VALUE',
    field: 'body.legs[0].ask.temptation',
  },
  { kind: 'rep-recorded', body: rep([], { clean: 'yes' }), code: 'FIELD_TYPE', field: 'body.clean' },
  { kind: 'rep-recorded', body: rep([], { reward: ['cake'] }), code: 'FIELD_VALUE', field: 'body.reward[0]' },
  {
    kind: 'rep-recorded',
    body: rep([], { expectation: 'x' }),
    code: 'FIELD_VALUE',
    field: 'body.expectation',
  },
  {
    kind: 'rep-recorded',
    body: rep([], { chain: [{ skill: 'line' }] }),
    code: 'FIELD_MISSING',
    field: 'body.chain[0].ask',
  },
  { kind: 'break-taken', body: { session: 's', minutes: -1 }, code: 'FIELD_RANGE', field: 'body.minutes' },
  { kind: 'rep-amended', body: { rep: 'r', legs: [{}] }, code: 'FIELD_MISSING', field: 'body.legs[0].skill' },
  {
    kind: 'goal-set',
    body: { goal: 'o', dog: 'd', name: 'n', asks: [{ skill: 'line', ask: {}, chance: 80 }] },
    code: 'FIELD_RANGE',
    field: 'body.asks[0].chance',
  },
  {
    kind: 'level-stated',
    body: { dog: 'd', skill: 'stop', farthestM: 401 },
    code: 'FIELD_RANGE',
    field: 'body.farthestM',
  },
  {
    kind: 'level-stated',
    body: { dog: 'd', skill: 'stop', ground: 'abroad' },
    code: 'FIELD_VALUE',
    field: 'body.ground',
  },
  { kind: 'level-stated', body: { dog: 'd' }, code: 'FIELD_MISSING', field: 'body.skill' },
  {
    kind: 'session-opened',
    body: { session: 's', dog: 'd', weather: { humidityPct: 101 } },
    code: 'FIELD_RANGE',
    field: 'body.weather.humidityPct',
  },
  {
    kind: 'film-linked',
    body: { film: 'm', session: 's', name: 'n', bytes: 1, startsAt: '9 am' },
    code: 'TIME_FORMAT',
    field: 'body.startsAt',
  },
  {
    kind: 'film-linked',
    body: { film: 'm', session: 's', name: 'n', bytes: 1, startsAt: '2201-01-01T00:00:00Z' },
    code: 'TIME_RANGE',
    field: 'body.startsAt',
  },
  {
    kind: 'film-marked',
    body: { mark: 'k', film: 'm', rep: 'r', what: 'bark', atS: 1, frameS: 0.04 },
    code: 'FIELD_VALUE',
    field: 'body.what',
  },
  {
    kind: 'film-marked',
    body: { mark: 'k', film: 'm', rep: 'r', what: 'halt', atS: -0.5, frameS: 0.04 },
    code: 'FIELD_RANGE',
    field: 'body.atS',
  },
  {
    kind: 'sound-heard',
    body: {
      sound: 'n',
      session: 's',
      from: 'file',
      name: 'n',
      lengthS: 9,
      whistles: [{ startS: 1, endS: 2, kind: 'short', pitchHz: 3000 }],
      clicks: [],
    },
    code: 'FIELD_VALUE',
    field: 'body.whistles[0].kind',
  },
  {
    kind: 'sound-joined',
    body: { sound: 'n', session: 's', joins: [{ rep: 'r', atS: -1, by: 'handler' }] },
    code: 'FIELD_RANGE',
    field: 'body.joins[0].atS',
  },
];
