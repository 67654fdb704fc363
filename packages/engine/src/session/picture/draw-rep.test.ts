import { describe, expect, it } from 'vitest';
import type { Ask } from '../../ability/index.ts';
import { castBearingRad } from '../../ground/index.ts';
import { drawnRep } from './draw-rep.ts';
import type { LaidLeg } from './laid-leg.ts';

const stopAt = (stopM: number): LaidLeg[] => [
  { skill: 'line', ask: { distanceM: 50, temptation: 'placed-dummy', handlerPlace: 'beside' } },
  { skill: 'stop', ask: { distanceM: stopM, wayFraction: stopM / 50, temptation: 'placed-dummy' } },
  { skill: 'cast-left', ask: { distanceM: stopM, castM: 14, blind: true } },
  { skill: 'pickup', ask: {} },
  { skill: 'delivery', ask: {} },
];

describe('the picture of a rep, worked by hand', () => {
  it('puts the stop where the ask says, in metres from the send point', () => {
    for (const stopM of [20, 35]) {
      const stop = drawnRep(stopAt(stopM)).strokes.find((stroke) => stroke.kind === 'stop');
      expect(stop).toMatchObject({ at: { eastM: 0, northM: stopM }, distanceM: stopM });
    }
  });

  it('lays what draws the dog past a stop at the end of the line, and of a line asked just to the stop at the end it is on', () => {
    const drawnPast = (lineM: number) =>
      drawnRep([
        { skill: 'line', ask: { distanceM: lineM } },
        { skill: 'stop', ask: { distanceM: 12, wayFraction: 0.25, temptation: 'placed-dummy' } },
      ]);
    for (const lineM of [48, 12]) {
      const picture = drawnPast(lineM);
      expect(picture.things.map(({ goal, northM }) => [goal, northM])).toEqual([['memory', 48]]);
      expect(picture.strokes.find(({ kind }) => kind === 'stop')).toMatchObject({ distanceM: 12 });
    }
  });

  it('casts left square to the west of the stop, and lays the unseen dummy there', () => {
    const picture = drawnRep(stopAt(20));
    const asked = picture.things.find((thing) => thing.role === 'asked');
    expect(asked?.goal).toBe('blind');
    expect(asked?.eastM).toBeCloseTo(-14, 9);
    expect(asked?.northM).toBeCloseTo(20, 9);
    expect(picture.things.find((thing) => thing.goal === 'memory')).toMatchObject({ eastM: 0, northM: 50 });
  });

  it('turns casts as the contract says: 90 square to the side, 180 straight on', () => {
    const compass = (side: 'left' | 'right' | 'back', turnDeg: number) =>
      ((castBearingRad(side, turnDeg) * 180) / Math.PI + 360) % 360;
    expect(compass('left', 90)).toBeCloseTo(270);
    expect(compass('right', 90)).toBeCloseTo(90);
    expect(compass('back', 180)).toBeCloseTo(0);
    expect(compass('left', 135)).toBeCloseTo(315);
    expect(() => castBearingRad('left', 200)).toThrow(RangeError);
  });

  it('sends a dog from where it sits when a cast is asked with nothing before it', () => {
    const picture = drawnRep([
      { skill: 'cast-right', ask: { distanceM: 15, castM: 10 } },
      { skill: 'pickup', ask: {} },
    ]);
    expect(picture.sendFrom).toEqual({ eastM: 0, northM: 15 });
    expect(picture.handlerAt).toEqual({ eastM: 0, northM: 0 });
    expect(picture.things.find((thing) => thing.role === 'asked')?.eastM).toBeCloseTo(10);
  });

  it('lays as many other dummies as the ask says, the nearest at its gap', () => {
    const picture = drawnRep([
      { skill: 'line', ask: { distanceM: 40, otherDummies: 3, gapDeg: 30 } },
      { skill: 'pickup', ask: {} },
    ]);
    const others = picture.things.filter((thing) => thing.role === 'other');
    expect(others).toHaveLength(3);
    const gaps = others.map((thing) => Math.abs((Math.atan2(thing.eastM, thing.northM) * 180) / Math.PI));
    expect(Math.min(...gaps)).toBeCloseTo(30);
  });

  it('stands the handler between, beside or apart as asked', () => {
    const place = (handlerPlace: 'between' | 'beside' | 'apart') =>
      drawnRep([{ skill: 'stop', ask: { distanceM: 20, wayFraction: 0.5, handlerPlace } }]).handlerAt;
    expect(place('beside')).toEqual({ eastM: 0, northM: 0 });
    expect(place('between').northM).toBeGreaterThan(3);
    expect(place('apart').northM).toBe(0);
    expect(Math.abs(place('apart').eastM)).toBeGreaterThan(5);
  });

  it('reaches over everything it draws', () => {
    const picture = drawnRep(stopAt(35));
    for (const thing of picture.things) expect(thing.northM).toBeLessThanOrEqual(picture.reachM);
    expect(picture.reachM).toBe(50);
  });
});

/** What lies out, by where it lies in metres east and north, and what its leg calls it. */
const lyingOut = (legs: LaidLeg[]): [number, number, string | null][] =>
  drawnRep(legs).things.map(({ eastM, northM, goal }) => [Math.round(eastM), Math.round(northM), goal]);

describe('what lies out is named by the leg that goes to it', () => {
  const line = (ask: Ask): LaidLeg => ({ skill: 'line', ask: { distanceM: 50, ...ask } });
  const stop: LaidLeg = { skill: 'stop', ask: { distanceM: 20, wayFraction: 0.4 } };
  const cast = (skill: 'cast-left' | 'cast-back', ask: Ask): LaidLeg => ({
    skill,
    ask: { distanceM: 20, castM: 14, ...ask },
  });
  const home: LaidLeg[] = [{ skill: 'pickup', ask: {} }];
  const placed = { temptation: 'placed-dummy' } as const;

  it.each<[string, LaidLeg[], [number, number, string | null][]]>([
    [
      'a cast to a blind off a line to a memory',
      [line(placed), stop, cast('cast-left', { blind: true }), ...home],
      [
        [-14, 20, 'blind'],
        [0, 50, 'memory'],
      ],
    ],
    [
      'a cast to a memory off a line to a blind',
      [line({ blind: true }), stop, cast('cast-left', placed), ...home],
      [
        [-14, 20, 'memory'],
        [0, 50, 'blind'],
      ],
    ],
    [
      'a cast that does not say, off a line to a blind',
      [line({ blind: true }), stop, cast('cast-left', {}), ...home],
      [
        [-14, 20, null],
        [0, 50, 'blind'],
      ],
    ],
    [
      'a cast to a memory off a line to a mark',
      [line({ temptation: 'thrown-dummy' }), stop, cast('cast-left', placed), ...home],
      [
        [-14, 20, 'memory'],
        [0, 50, 'mark'],
      ],
    ],
    [
      'a cast back goes on to the one dummy, which is a blind if the line says so',
      [line({ blind: true, ...placed }), stop, cast('cast-back', placed), ...home],
      [[0, 34, 'blind']],
    ],
    [
      'or if the cast says so',
      [line(placed), stop, cast('cast-back', { blind: true }), ...home],
      [[0, 34, 'blind']],
    ],
    [
      'and is the memory where the line alone says',
      [line(placed), stop, cast('cast-back', {}), ...home],
      [[0, 34, 'memory']],
    ],
    [
      'a cast back to a dummy off a line to a post',
      [line({ temptation: 'post' }), stop, cast('cast-back', placed), ...home],
      [
        [0, 34, 'memory'],
        [0, 50, 'post'],
      ],
    ],
    [
      'a dummy at a post',
      [line({ temptation: 'post' }), ...home],
      [
        [0, 50, 'post'],
        [0, 50, null],
      ],
    ],
    ['a post alone', [line({ temptation: 'post' })], [[0, 50, 'post']]],
    ['game is no memory', [line({ temptation: 'game' }), ...home], [[0, 50, 'game']]],
    ['a line that does not say', [line({}), ...home], [[0, 50, null]]],
    ['a mark was seen to fall', [{ skill: 'mark', ask: { distanceM: 50 } }, ...home], [[0, 50, 'mark']]],
    [
      'what only draws a steady dog is a dummy',
      [{ skill: 'steady', ask: { distanceM: 8, temptation: 'thrown-dummy' } }],
      [[0, 8, null]],
    ],
  ])('%s', (_name, legs, wanted) => {
    expect(lyingOut(legs)).toEqual(wanted);
  });
});

describe('an obstacle lies on the way of its own leg', () => {
  const stopped = (line: Ask, stop: Ask, cast: Ask, pickup: Ask = {}): LaidLeg[] => [
    { skill: 'line', ask: { distanceM: 50, ...line } },
    { skill: 'stop', ask: { distanceM: 20, wayFraction: 0.4, ...stop } },
    { skill: 'cast-right', ask: { distanceM: 20, castM: 14, ...cast } },
    { skill: 'pickup', ask: pickup },
  ];
  const where = (legs: LaidLeg[]) => drawnRep(legs).obstacles.map(({ on, level }) => [on, level]);

  it.each<[string, LaidLeg[], (string | number)[][]]>([
    ['the cast alone', stopped({}, {}, { obstacle: 2 }), [['cast', 2]]],
    ['the line alone', stopped({ obstacle: 2 }, {}, {}), [['line', 2]]],
    [
      'each its own',
      stopped({ obstacle: 1 }, {}, { obstacle: 3 }),
      [
        ['line', 1],
        ['cast', 3],
      ],
    ],
    [
      'a stop lies on its line, and the higher counts',
      stopped({ obstacle: 1 }, { obstacle: 2 }, {}),
      [['line', 2]],
    ],
    ['a pick-up is come home from over the last way', stopped({}, {}, {}, { obstacle: 1 }), [['cast', 1]]],
    [
      'a cast from a sit',
      [{ skill: 'cast-left', ask: { distanceM: 15, castM: 10, obstacle: 1 } }],
      [['cast', 1]],
    ],
    ['a recall', [{ skill: 'recall', ask: { distanceM: 30, obstacle: 3 } }], [['recall', 3]]],
    ['a dog that is sent nowhere', [{ skill: 'steady', ask: { obstacle: 1 } }], [['ahead', 1]]],
    ['open ground', stopped({}, {}, {}), []],
  ])('%s', (_name, legs, wanted) => {
    expect(where(legs)).toEqual(wanted);
  });

  it('says from where to where its way goes', () => {
    const [ditch] = drawnRep(stopped({}, {}, { obstacle: 1 })).obstacles;
    expect(ditch?.from).toEqual({ eastM: 0, northM: 20 });
    expect(ditch?.to.eastM).toBeCloseTo(14, 9);
    expect(ditch?.to.northM).toBeCloseTo(20, 9);
  });
});
