import type { Leg } from '@sedgeline/journal';
import { describe, expect, test } from 'vitest';
import { MORE_CLEAN_FROM_WEEK } from './kennel-cast.ts';
import { isGood, type SeenRep, seenReps, shareOf } from './seen-reps.ts';

// What the scenario promises must be in the record. One kennel is a small sample, so each promise is looked for in the
// records of twelve seeds together: some 30,000 legs.
const KENNELS = Array.from({ length: 12 }, (_unused, at) => seenReps(at + 1));
const ALL = KENNELS.flat();
const of = (dog: string) => ALL.filter((rep) => rep.dog === dog);
const legsOf = (reps: readonly SeenRep[], skill: Leg['skill']) =>
  reps.flatMap(({ body }) => body.legs).filter((leg) => leg.skill === skill);
const isLineSend = ({ body }: SeenRep) => body.legs.some(({ skill }) => skill === 'line');
const expects = ({ body }: SeenRep) =>
  body.expectation === 'hangs-back' || body.expectation === 'stops-unasked';

/** Clean sends of a dog, each with the share of stopped sends among the eight before it. */
function cleanSends(dog: string) {
  return KENNELS.flatMap((kennel) => {
    const sends = kennel.filter((rep) => rep.dog === dog && isLineSend(rep));
    return sends.flatMap((send, at) => {
      if (send.body.clean !== true || at < 8) return [];
      return [{ send, stopped: shareOf(sends.slice(at - 8, at), ({ body }) => body.clean === false) }];
    });
  });
}

describe('the keen dog', () => {
  const sends = cleanSends('rook');
  const share = (some: typeof sends) => shareOf(some, ({ send }) => expects(send));
  test('expects the whistle at least twice as often after mostly stopped sends as after mostly clean ones', () => {
    const afterStops = share(sends.filter(({ stopped }) => stopped >= 0.6));
    const afterClean = share(sends.filter(({ stopped }) => stopped <= 0.4));
    expect(afterStops).toBeGreaterThan(2 * afterClean);
  });
  test('expects it more and more until it is let run clean, then less', () => {
    const weeks = (from: number, to: number) =>
      sends.filter(({ send }) => send.week >= from && send.week < to);
    const first = share(weeks(0, 8));
    const worst = share(weeks(MORE_CLEAN_FROM_WEEK - 8, MORE_CLEAN_FROM_WEEK));
    const after = share(weeks(MORE_CLEAN_FROM_WEEK + 8, 36));
    expect(worst).toBeGreaterThan(2 * first);
    expect(after).toBeLessThan(0.7 * worst);
  });
  test('expects it far more than the others', () => {
    const others = [...cleanSends('tansy'), ...cleanSends('moss')];
    expect(share(sends)).toBeGreaterThan(4 * share(others));
  });
});

/** The work out in the field; home and hand-over are nearly always good. */
const FIELD_WORK = new Set<Leg['skill']>(['line', 'stop', 'mark', 'cast-left', 'cast-right', 'cast-back']);

describe('the old hand', () => {
  const middling = (reps: readonly SeenRep[]) =>
    legsOf(reps, 'stop').filter(
      ({ ask }) =>
        (ask.distanceM ?? 0) >= 20 && (ask.distanceM ?? 0) <= 45 && ask.temptation === 'placed-dummy',
    );
  test.each(['tansy', 'rook'])('stops better than %s at like asks', (other) => {
    expect(shareOf(middling(of('moss')), isGood)).toBeGreaterThan(shareOf(middling(of(other)), isGood) + 0.1);
  });
  test('does worse from the tenth rep on than at the start, the easy last rep left out', () => {
    const sessions = new Map<string, SeenRep[]>();
    for (const rep of of('moss')) sessions.set(rep.session, [...(sessions.get(rep.session) ?? []), rep]);
    const placed = [...sessions.values()].flatMap((reps) =>
      reps.slice(0, -1).map((rep, at) => ({ rep, n: at + 1 })),
    );
    const share = (from: number, to: number) => {
      const reps = placed.filter(({ n }) => n >= from && n <= to).map(({ rep }) => rep);
      return shareOf(
        reps.flatMap(({ body }) => body.legs).filter(({ skill }) => FIELD_WORK.has(skill)),
        isGood,
      );
    };
    expect(share(2, 4)).toBeGreaterThan(share(10, 13) + 0.03);
  });
});

describe('the careful young bitch', () => {
  const legsOn = (reps: readonly SeenRep[]) => reps.flatMap(({ body }) => body.legs);
  test('pays for new ground though she is asked less there', () => {
    const away = of('tansy').filter(({ ground }) => ground !== 'paddock');
    const fresh = legsOn(away.filter(({ earlierOnGround }) => earlierOnGround === 0));
    const known = legsOn(away.filter(({ earlierOnGround }) => earlierOnGround >= 3));
    expect(shareOf(fresh, isGood)).toBeLessThan(shareOf(known, isGood) - 0.03);
  });
  test('is asked more as the months go on', () => {
    const meanM = (from: number, to: number) => {
      const lines = legsOf(
        of('tansy').filter(({ week }) => week >= from && week < to),
        'line',
      );
      return lines.reduce((sum, { ask }) => sum + (ask.distanceM ?? 5), 0) / lines.length;
    };
    expect(meanM(28, 36)).toBeGreaterThan(2 * meanM(0, 4));
  });
});

test("one handler's whistle comes late more often than the other's", () => {
  const late = (dog: string) => shareOf(legsOf(of(dog), 'stop'), ({ planned }) => planned !== undefined);
  // The chances planted are 0.16 and 0.05; with some 1,000 stops each the shares stay within 0.04 of them.
  expect(late('rook')).toBeGreaterThan(0.12);
  expect(late('tansy')).toBeLessThan(0.09);
});

test('a handler raises asks step by step: every dog stays between half and nearly all good', () => {
  for (const dog of ['tansy', 'rook', 'moss']) {
    const share = shareOf(
      of(dog).flatMap(({ body }) => body.legs),
      isGood,
    );
    expect(share, dog).toBeGreaterThan(0.5);
    expect(share, dog).toBeLessThan(0.97);
  }
});
