import { describe, expect, it } from 'vitest';
import crossTrack from '../../reference/cross-track.json' with { type: 'json' };
import field from '../../reference/field-enu-utm.json' with { type: 'json' };
import geodesics from '../../reference/geodesic-short.json' with { type: 'json' };
import { angleApartDeg, RAD_PER_DEG } from '../quantity/index.ts';
import { bearingDegOf } from './bearing.ts';
import { clearanceToM, lineOffset } from './line-offset.ts';
import { type GeoPoint, groundLine, localPlane } from './local-plane.ts';
import { distanceBetweenM } from './plane.ts';

const geo = ([latDeg, lonDeg]: readonly number[]): GeoPoint => ({ latDeg: latDeg!, lonDeg: lonDeg! });

describe('distances and bearings on WGS84', () => {
  const rows = geodesics.rows as [number, number, number, number, number, number, string][];

  it('has all 197 geodesics of up to 1.2 km', () => expect(rows).toHaveLength(197));

  it.each(rows)('from %d %d at %d degrees over %d m', (lat1, lon1, azimuthDeg, distanceM, lat2, lon2) => {
    const line = groundLine({ latDeg: lat1, lonDeg: lon1 }, { latDeg: lat2, lonDeg: lon2 });
    // 1e-7 m: the tolerance of the rows.
    expect(Math.abs(line.distanceM - distanceM)).toBeLessThan(1e-7);
    // 1e-6 / s degrees: that of the rows; and the chord's bearing differs from the geodesic's by e2 s2 / 12 R2, under 1e-9 degrees.
    expect(angleApartDeg(line.bearingDeg, azimuthDeg)).toBeLessThan(1e-6 / distanceM + 2e-9);
  });

  it.each(rows)(
    'there and back on the plane from %d %d at %d degrees, %d m',
    (lat1, lon1, azimuthDeg, distanceM, lat2, lon2) => {
      const plane = localPlane({ latDeg: lat1, lonDeg: lon1 });
      // On the tangent plane a length is short by s3 / 6 R2: 6e-6 m at 1.1 km.
      const shortM = distanceM ** 3 / (6 * 6_335_000 ** 2);
      const out = {
        eastM: distanceM * Math.sin(azimuthDeg * RAD_PER_DEG),
        northM: distanceM * Math.cos(azimuthDeg * RAD_PER_DEG),
      };
      const there = plane.toPlane({ latDeg: lat2, lonDeg: lon2 });
      expect(distanceBetweenM(there, out)).toBeLessThan(shortM + 2e-7);
      // 1e-8 m: twice the rounding of a place on the earth in doubles.
      const back = plane.toGeo(there);
      expect(groundLine({ latDeg: lat2, lonDeg: lon2 }, back).distanceM).toBeLessThan(1e-8);
    },
  );
});

describe('a field as a plane', () => {
  const rows = field.rows as [
    string,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ][];

  it('has the 60 points of four fields', () => expect(rows).toHaveLength(60));

  it.each(rows)('%s %d %d: %d %d', (_, lat0, lon0, latDeg, lonDeg, eastM, northM) => {
    const point = localPlane({ latDeg: lat0, lonDeg: lon0 }).toPlane({ latDeg, lonDeg });
    // 2e-6 m: the tolerance of the rows.
    expect(Math.abs(point.eastM - eastM)).toBeLessThan(2e-6);
    expect(Math.abs(point.northM - northM)).toBeLessThan(2e-6);
  });

  it('agrees with the grid of the map: UTM lengths over the scale, grid bearings turned by the convergence', () => {
    for (const name of new Set(rows.map(([id]) => id))) {
      const own = rows.filter(([id]) => id === name);
      const origin = own.find((row) => row[5] === 0 && row[6] === 0)!;
      const plane = localPlane({ latDeg: origin[1], lonDeg: origin[2] });
      for (const row of own) {
        if (row === origin) continue;
        const point = plane.toPlane({ latDeg: row[3], lonDeg: row[4] });
        const grid = { eastM: row[7] - origin[7], northM: row[8] - origin[8] };
        const gridM = Math.hypot(grid.eastM, grid.northM);
        const lengthM = Math.hypot(point.eastM, point.northM);
        const scale = (row[9] + origin[9]) / 2;
        // The scale is given to 1e-6, UTM coordinates to 1e-4 m.
        expect(Math.abs(gridM / scale - lengthM)).toBeLessThan(1e-6 * gridM + 2e-4);
        // The convergence is a spherical figure good to 0.003 degrees here; coordinates of 1e-4 m; the grid's own arc to chord under 0.001.
        const turned = bearingDegOf({ eastM: 0, northM: 0 }, grid) + (row[10] + origin[10]) / 2;
        const bearing = bearingDegOf({ eastM: 0, northM: 0 }, point);
        expect(angleApartDeg(turned, bearing)).toBeLessThan(0.004 + (2e-4 / lengthM) * 57.3);
      }
    }
  });
});

describe('across and along a line in the field', () => {
  it.each(crossTrack.examples)('$id', (row) => {
    const plane = localPlane(geo(row.start));
    const [from, to, point] = [row.start, row.target, row.point].map((at) => plane.toPlane(geo(at))) as [
      { eastM: number; northM: number },
      { eastM: number; northM: number },
      { eastM: number; northM: number },
    ];
    // 0.0005 m: the tolerance of the examples.
    const offset = lineOffset(from, to, point);
    expect(Math.abs(offset.acrossM - row.cross_track_m)).toBeLessThan(0.0005);
    expect(Math.abs(offset.alongM - row.along_track_m)).toBeLessThan(0.0005);
    expect(Math.abs(clearanceToM(from, to, point) - row.segment_distance_m)).toBeLessThan(0.0005);
    expect(Math.abs(distanceBetweenM(from, to) - row.line_length_m)).toBeLessThan(0.0005);
    // 1e-6 degrees is the last printed digit; 1e-8 degrees of the places make 1 mm at the target.
    expect(angleApartDeg(bearingDegOf(from, to), row.line_bearing_deg)).toBeLessThan(1e-5);
  });
});

describe('the ends of the earth', () => {
  it('has lengths at latitude 89 and at the pole itself, and across the date line', () => {
    // A degree of the meridian at the pole: 111,694 m by the meridian's radius a / sqrt(1 - e2) there, so 0.001 degrees are 111.694 m (0.001: the figure is rounded).
    const pole = groundLine({ latDeg: 90, lonDeg: 0 }, { latDeg: 89.999, lonDeg: 40 });
    expect(Math.abs(pole.distanceM - 111.694)).toBeLessThan(0.001);
    const near = groundLine({ latDeg: 89, lonDeg: 179.99 }, { latDeg: 89, lonDeg: -179.99 });
    // 0.02 degrees of a circle of 1949.6 m a degree (radius 111.70 km at latitude 89): 38.99 m (0.02: the radius is rounded).
    expect(Math.abs(near.distanceM - 38.99)).toBeLessThan(0.02);
  });

  it('says no to places that are none, or too far for a plane', () => {
    const plane = localPlane({ latDeg: 52, lonDeg: -1 });
    expect(() => localPlane({ latDeg: 91, lonDeg: 0 })).toThrow('latDeg: expected -90..90, got 91');
    expect(() => plane.toPlane({ latDeg: Number.NaN, lonDeg: 0 })).toThrow(RangeError);
    expect(() => plane.toPlane({ latDeg: 53, lonDeg: -1 })).toThrow(/within 20000 m/);
    expect(() => plane.toGeo({ eastM: Number.NaN, northM: 0 })).toThrow(RangeError);
  });
});
