import { distanceBetweenM, type Layout, type PlanePoint, type Thing } from '../../ground/index.ts';
import type { Errand } from '../next/next-answer.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';
import { isAsked, layOut } from '../picture/lay-out.ts';
import { LAYING } from './duration-priors.ts';

/** Places nearer than this are one place: an arm's length. */
const SAME_PLACE_M = 0.5;

/** What a rep needs on the ground, and what must be done for it after the rep before. */
export interface LaidRep {
  readonly layout: Layout;
  readonly before: readonly Errand[];
  /** Seconds that the errands take. */
  readonly laysS: number;
  /** What lies out once the rep went as asked. */
  readonly leaves: readonly Thing[];
}

/**
 * Lays a rep out after another. The chain says where things lie (`layOut`); a dummy or a post that lies out already is used
 * again where it can be: the send point moves instead of it, and the things that stay keep their names and their distances
 * from each other. What else lies out is lifted first, so that exactly what the asks say is out. A mark is thrown for each rep.
 * Metres; seconds by the rates of `LAYING`.
 */
export function layAfter(lying: readonly Thing[], legs: readonly LaidLeg[]): LaidRep {
  const wanted = layOut(legs);
  const kept = keptThings(lying, wanted.things);
  const names = new Set([...kept.values()].map(({ thing }) => thing));
  const things = wanted.things.map((thing): Thing => {
    const stays = kept.get(thing);
    if (stays !== undefined) return { ...thing, thing: stays.thing, how: stays.how };
    if (thing.kind === 'other') return thing;
    const name = freeName(thing.thing, names);
    names.add(name);
    return { ...thing, thing: name };
  });
  const lifted = lying.filter((thing) => ![...kept.values()].includes(thing));
  const laid = things.filter((thing, n) => thing.kind !== 'other' && !kept.has(wanted.things[n] ?? thing));
  const movedM = [...kept].reduce((so, [now, was]) => Math.max(so, distanceBetweenM(now, was)), 0);
  const errands = errandsFor(lifted, laid, movedM);
  const isPicked = legs.some(({ skill }) => PICKS_UP.has(skill));
  return {
    layout: { ...wanted, things },
    before: errands,
    laysS: errandsS(errands),
    leaves: things.filter(
      (thing, n) =>
        thing.kind === 'post' ||
        (thing.kind === 'dummy' && !(isPicked && isAsked(wanted.things[n] ?? thing))),
    ),
  };
}

/** Legs that take the asked dummy up. */
const PICKS_UP: ReadonlySet<string> = new Set(['pickup', 'delivery', 'hunt', 'mark']);

/**
 * Which of the wanted things lie there already, all distances among them as they are: first what keeps its part in the rep, then
 * whatever else will do. A mark that falls anew is none of them.
 */
function keptThings(lying: readonly Thing[], wanted: readonly Thing[]): Map<Thing, Thing> {
  const kept = new Map<Thing, Thing>();
  const open = wanted.filter(({ kind, how }) => kind !== 'other' && how !== 'thrown');
  for (const isSamePart of [true, false]) {
    for (const want of open) {
      if (kept.has(want)) continue;
      const there = lying.find(
        (thing) =>
          thing.kind === want.kind &&
          (!isSamePart || partOf(thing) === partOf(want)) &&
          ![...kept.values()].includes(thing) &&
          liesAlike([...kept], want, thing),
      );
      if (there !== undefined) kept.set(want, there);
    }
  }
  return kept;
}

/** The part a thing was laid for, by its name without the number. */
const partOf = ({ thing }: Thing): string => thing.replace(/(-\d+)+$/, '');

/** As far from every kept thing as it is to be, and round the same way: no walk turns the ground over. */
function liesAlike(kept: readonly (readonly [Thing, Thing])[], want: Thing, there: Thing): boolean {
  return kept.every(([now, was], n) => {
    if (Math.abs(distanceBetweenM(now, want) - distanceBetweenM(was, there)) > SAME_PLACE_M) return false;
    return kept.slice(0, n).every(([now2, was2]) => hand(now, now2, want) * hand(was, was2, there) >= 0);
  });
}

/** Twice the signed area of three places: its sign is the way round they lie. */
function hand(a: PlanePoint, b: PlanePoint, c: PlanePoint): number {
  return (b.eastM - a.eastM) * (c.northM - a.northM) - (b.northM - a.northM) * (c.eastM - a.eastM);
}

function freeName(name: string, taken: ReadonlySet<string>): string {
  if (!taken.has(name)) return name;
  for (let n = 2; ; n++) if (!taken.has(`${name}-${n}`)) return `${name}-${n}`;
}

const SEND_POINT: PlanePoint = { eastM: 0, northM: 0 };
const roundedM = (lengthM: number): number => Math.round(lengthM * 10) / 10;
const farM = (thing: PlanePoint): number => distanceBetweenM(SEND_POINT, thing);

/** One round takes up what is in the way and puts out what is wanted, nearest first; then the throws, from where they carry. */
function errandsFor(lifted: readonly Thing[], laid: readonly Thing[], movedM: number): Errand[] {
  const thrown = laid.filter(({ how }) => how === 'thrown');
  const placed = laid.filter(({ how }) => how !== 'thrown');
  const stops: PlanePoint[] = [...lifted, ...placed].sort((a, b) => farM(a) - farM(b));
  for (const thing of thrown) {
    const share = Math.max(0, 1 - LAYING.throwM / Math.max(farM(thing), 1e-9));
    if (share > 0) stops.push({ eastM: thing.eastM * share, northM: thing.northM * share });
  }
  let walkM = movedM;
  let at = SEND_POINT;
  for (const stop of stops) {
    walkM += distanceBetweenM(at, stop);
    at = stop;
  }
  walkM += distanceBetweenM(at, SEND_POINT);
  const act =
    (what: Errand['do']) =>
    (thing: Thing): Errand => ({
      do: what,
      thing: thing.thing,
      metres: roundedM(farM(thing)),
    });
  return [
    ...(roundedM(walkM) > 0 ? [{ do: 'walk' as const, metres: roundedM(walkM) }] : []),
    ...lifted.map(act('lift')),
    ...placed.map(act('place')),
    ...thrown.map(act('throw')),
  ];
}

/** Seconds that errands take, by the rates of `LAYING`. */
export function errandsS(errands: readonly Errand[]): number {
  return errands.reduce((so, errand) => so + errandS(errand), 0);
}

function errandS({ do: what, metres = 0 }: Errand): number {
  if (what === 'walk') return metres / LAYING.walkMPerS;
  return what === 'place' ? LAYING.placeS : what === 'lift' ? LAYING.liftS : LAYING.throwS;
}
