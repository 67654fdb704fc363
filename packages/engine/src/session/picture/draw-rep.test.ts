import { describe, expect, it } from 'vitest';
import { castBearingRad } from '../../ground/index.ts';
import type { LaidLeg } from './chain-shape.ts';
import { drawnRep } from './draw-rep.ts';

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

  it('casts left square to the west of the stop, and lays the unseen dummy there', () => {
    const picture = drawnRep(stopAt(20));
    const asked = picture.things.find((thing) => thing.role === 'asked-unseen');
    expect(asked?.eastM).toBeCloseTo(-14, 9);
    expect(asked?.northM).toBeCloseTo(20, 9);
    expect(picture.things.find((thing) => thing.thing === 'memory')).toMatchObject({ eastM: 0, northM: 50 });
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
