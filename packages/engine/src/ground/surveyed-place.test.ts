import { describe, expect, it } from 'vitest';
import { seededRandom } from '../numeric/index.ts';
import { groundLine, localPlane } from './local-plane.ts';
import { type Fix, surveyedPlace } from './surveyed-place.ts';

const HOME = { latDeg: 52, lonDeg: -1 };
const plane = localPlane(HOME);
const fixAt = (eastM: number, northM: number, atS: number, accuracyM = 5): Fix => ({
  ...plane.toGeo({ eastM, northM }),
  atMs: atS * 1000,
  accuracyM,
});
const HOUR_S = 3600;

describe('a place measured by averaging', () => {
  it('has no answer without a fix, and one fix has its own radius', () => {
    expect(surveyedPlace([])).toBeNull();
    const one = surveyedPlace([fixAt(0, 0, 0)])!;
    // Rayleigh, exact: 5 m at 68 % is sigma 5 / 1.50959 = 3.31215 m; 90 % is 2.14597 sigma = 7.10776 m (1e-4: five digits of the constants).
    expect(Math.abs(one.radiusM - 7.10776)).toBeLessThan(1e-4);
    expect(one).toMatchObject({ fixes: 1, worthFixes: 1, probability: 0.9 });
  });

  it('has the published constants of a round scatter: 95 % is 2.447747 sigma, 50 % is 1.177410 sigma', () => {
    const radius = (probability: number) =>
      surveyedPlace([fixAt(0, 0, 0, 2.447747)], { accuracyHolds: 0.95, probability })!.radiusM;
    // 1e-6: the constants have seven digits.
    expect(Math.abs(radius(0.5) - 1.17741)).toBeLessThan(1e-6);
    expect(Math.abs(radius(0.95) - 2.447747)).toBeLessThan(1e-6);
  });

  it('weighs by accuracy: 2 m against 4 m is four to one', () => {
    const place = surveyedPlace([fixAt(0, 0, 0, 2), fixAt(10, 0, HOUR_S, 4)])!;
    // (4 * 0 + 1 * 10) / 5 = 2 m east (1e-6: a tangent plane moved by 10 m).
    expect(Math.abs(plane.toPlane(place).eastM - 2)).toBeLessThan(1e-6);
  });

  it('fixes hours apart average out, fixes at one moment do not', () => {
    const apart = surveyedPlace([0, 1, 2, 3].map((k) => fixAt(0, 0, 10 * k * HOUR_S)))!;
    const once = surveyedPlace([0, 1, 2, 3].map(() => fixAt(0, 0, 0)))!;
    const one = surveyedPlace([fixAt(0, 0, 0)])!;
    // exp(-36000/300) is nothing: four independent fixes halve the radius.
    expect(apart.radiusM).toBeCloseTo(one.radiusM / 2, 9);
    expect(apart.worthFixes).toBeCloseTo(4, 9);
    expect(once.radiusM).toBeCloseTo(one.radiusM, 9);
    expect(once.worthFixes).toBeCloseTo(1, 9);
  });

  it('two fixes by hand: half the sum of variance and covariance', () => {
    // rho = exp(-60/300) = 0.818731; variance of the mean is sigma2 (1 + rho) / 2, worth 2 / (1 + rho) = 1.0997 fixes.
    const pair = surveyedPlace([fixAt(0, 0, 0), fixAt(0, 0, 60)])!;
    expect(pair.worthFixes).toBeCloseTo(1.099669, 5);
  });

  it('widens where the fixes scatter more than they claim', () => {
    const wild = surveyedPlace([fixAt(0, 0, 0), fixAt(80, 0, HOUR_S), fixAt(0, 90, 2 * HOUR_S)])!;
    expect(wild.radiusM).toBeGreaterThan(20);
  });

  it('holds the truth as often as it says, where errors are made as the model has them', () => {
    const random = seededRandom(7);
    const runs = 2_000;
    let held = 0;
    const sigmaM = 5 / Math.sqrt(-2 * Math.log(0.32));
    const keeps = Math.exp(-10 / 300);
    for (let run = 0; run < runs; run++) {
      let [e, n] = [random.normal() * sigmaM, random.normal() * sigmaM];
      const fixes = Array.from({ length: 12 }, (_, k) => {
        const fix = fixAt(e, n, 10 * k);
        const fresh = sigmaM * Math.sqrt(1 - keeps * keeps);
        [e, n] = [keeps * e + fresh * random.normal(), keeps * n + fresh * random.normal()];
        return fix;
      });
      const place = surveyedPlace(fixes)!;
      if (groundLine(HOME, place).distanceM <= place.radiusM) held++;
    }
    // 90 % less four standard errors of 2,000 runs; never much more than it, since only chance scatter widens it.
    expect(held / runs).toBeGreaterThan(0.873);
    expect(held / runs).toBeLessThan(0.96);
  });

  it('says no to fixes that are none', () => {
    expect(() => surveyedPlace([fixAt(0, 0, 0, 0)])).toThrow('accuracyM');
    expect(() => surveyedPlace([fixAt(0, 0, 0), fixAt(900, 0, 1)])).toThrow('eastM');
    expect(() => surveyedPlace([{ ...fixAt(0, 0, 0), atMs: Number.NaN }])).toThrow('atMs');
    expect(() => surveyedPlace([fixAt(0, 0, 0)], { probability: 1 })).toThrow('probability');
  });
});
