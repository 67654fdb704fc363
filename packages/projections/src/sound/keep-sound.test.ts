import type { SoundHeard, SoundJoined } from '@sedgeline/journal';
import { describe, expect, it } from 'vitest';
import { createKennel } from '../kennel-of-facts.ts';
import { TrainingDay } from '../work/training-day.fixture.ts';
import { keepSoundFacts } from './keep-sound.ts';
import { ownWhistleOf } from './own-whistle-of.ts';

const long = (startS: number, pitchHz = 3000) =>
  ({ startS, endS: startS + 0.6, kind: 'long', pitchHz }) as const;

/**
 * A session opened at 9:02; four stops tapped at 9:03, 9:04, 9:05 and 9:06, and one from memory. The sound began with the session: a
 * whistle 5 s before each tap but the third's, which is missing, and one of another pitch.
 */
function morning() {
  const stop = { skill: 'stop', ask: { distanceM: 30, wayFraction: 0.5 } } as const;
  const day = new TrainingDay('2026-03-01T09:00:00Z').dog('wren', { runSpeedMPerS: 6 }).open('s', 'wren');
  const startsMs = day.atMs;
  day
    .rep([stop], { rep: 'a' })
    .rep([stop, { skill: 'cast-left', ask: { distanceM: 30, castM: 10 } }], { rep: 'b' })
    .rep([stop], { rep: 'c' })
    .rep([stop], { rep: 'd' })
    .rep([stop], { rep: 'm', fromMemory: true });
  const whistles = [long(55), long(100, 4200), long(110), long(235)];
  return { day, startsMs, whistles };
}

function kennelOf(day: TrainingDay) {
  const kennel = createKennel();
  kennel.add(day.facts);
  return kennel;
}

const heard = (whistles: SoundHeard['whistles'], more: Partial<SoundHeard> = {}): SoundHeard => ({
  sound: 'n',
  session: 's',
  from: 'file',
  name: 'hedge.mp4',
  lengthS: 400,
  whistles,
  clicks: [],
  ...more,
});

const JOINS: SoundJoined['joins'] = [
  { rep: 'a', leg: 0, atS: 55, by: 'program' },
  { rep: 'b', leg: 0, atS: 110, by: 'handler' },
];

describe('a sound beside the reps', () => {
  it('proposes a whistle for each stop that has one, and none for the one that has not', () => {
    const { day, startsMs, whistles } = morning();
    const starts = { atMs: startsMs, withinS: 2 };
    const answer = kennelOf(day).listen('s', { lengthS: 400, starts, whistles, clicks: [] });
    const best = answer?.joins.map(({ rep, candidates }) => [rep, candidates[0]?.startS]);
    expect(best?.filter(([rep]) => rep !== 'c')).toEqual([
      ['a', 55],
      ['b', 110],
      ['d', 235],
    ]);
    expect(answer?.joins.find(({ rep }) => rep === 'c')?.isSure ?? false).toBe(false);
    // Four stops are whistled for; the one from memory can't be placed.
    expect(answer?.wanted).toBe(4);
    expect(answer?.untimed).toBe(1);
    expect(answer?.reps.map(({ rep, number }) => [rep, number])).toEqual([
      ['a', 1],
      ['b', 2],
      ['c', 3],
      ['d', 4],
    ]);
    expect(kennelOf(day).listen('none', { lengthS: 1, starts: null, whistles, clicks: [] })).toBeNull();
  });

  it('places the reps by the known beginning where nothing was whistled for', () => {
    const day = new TrainingDay('2026-03-01T09:00:00Z').dog('wren').open('s', 'wren');
    const starts = { atMs: day.atMs, withinS: 2 };
    day.rep([{ skill: 'line' }], { rep: 'a' });
    const answer = kennelOf(day).listen('s', { lengthS: 90, starts, whistles: [long(20)], clicks: [] });
    expect(answer?.joins).toEqual([]);
    expect(answer?.wanted).toBe(0);
    expect(answer?.reps[0]).toMatchObject({ rep: 'a', fromS: 60, toS: 60 });
  });

  it('tells a sound in which nothing fits from a session that asks for no whistle', () => {
    const { day, startsMs } = morning();
    // A sound of the hour before, whose beginning is known: nothing in it can be of these reps.
    const starts = { atMs: startsMs - 3_600_000, withinS: 2 };
    const answer = kennelOf(day).listen('s', { lengthS: 60, starts, whistles: [long(20)], clicks: [] });
    expect(answer?.joins).toEqual([]);
    expect(answer?.wanted).toBe(4);
  });

  it('joins dogs worked in turn together: each whistle is one dog’s', () => {
    const stop = { skill: 'stop', ask: { distanceM: 30 } } as const;
    const day = new TrainingDay('2026-03-01T09:00:00Z').dog('wren').dog('teal');
    day.open('t', 'teal', { class: 'c' }).open('s', 'wren', { class: 'c' });
    const starts = { atMs: day.atMs, withinS: 2 };
    day.rep([stop], { rep: 'a', session: 's' }).rep([stop], { rep: 'b', session: 't' });
    const whistles = [long(56), long(116)];
    const answer = kennelOf(day).listen('s', { lengthS: 200, starts, whistles, clicks: [] });
    expect(answer?.joins.map(({ rep, candidates }) => [rep, candidates[0]?.startS])).toEqual([
      ['a', 56],
      ['b', 116],
    ]);
    expect(answer?.reps.map(({ dogName }) => dogName)).toEqual(['wren', 'teal']);
  });
});

describe('keeping a sound', () => {
  it('is two facts that the record reads back, and the own whistle from the joined blasts alone', () => {
    const { day, whistles } = morning();
    const kennel = kennelOf(day);
    const facts = keepSoundFacts(kennel.record, { heard: heard(whistles), joins: JOINS }, () => 'k');
    expect(facts.map(({ kind }) => kind)).toEqual(['sound-heard', 'sound-joined']);
    for (const { kind, body } of facts) day.write(kind, body);
    const { record } = kennelOf(day);
    expect(record.sounds).toMatchObject([{ sound: 'n', session: 's', joins: JOINS }]);
    expect(record.setAside).toBe(0);
    expect(ownWhistleOf(record, null)?.pitchHz).toBeCloseTo(3000, 6);
    expect(ownWhistleOf(record, 'somebody')).toBeNull();
    day.write('sound-dropped', { sound: 'n', session: 's' });
    expect(kennelOf(day).record.sounds).toEqual([]);
    expect(ownWhistleOf(kennelOf(day).record, null)).toBeNull();
    day.write('sound-dropped', { sound: 'n', session: 's', stands: true });
    expect(kennelOf(day).record.sounds).toHaveLength(1);
  });

  it('counts facts on a session that is not there as set aside', () => {
    const day = new TrainingDay('2026-03-01T09:00:00Z').dog('wren').write('sound-heard', { ...heard([]) });
    day.write('sound-joined', { sound: 'n', session: 's', joins: [] });
    expect(kennelOf(day).record.setAside).toBe(2);
  });

  it('of a film marks the whistle, and times the halt and the place by the film’s own marks', () => {
    const { day, whistles } = morning();
    const film = { film: 'f', session: 's', name: 'hedge.mp4', bytes: 9000 };
    day.write('film-linked', film);
    const mark = (name: string, rep: string, what: string, atS: number) =>
      day.write('film-marked', { mark: name, film: 'f', rep, what, atS, frameS: 0.04 });
    // Sent 7.6 s before its whistle at 110 s: at 6 m/s after 1.2 s of getting going (3.6 m) it is 3.6 + 6 * 6.4 = 42 m out.
    mark('1', 'b', 'sent', 102.4);
    mark('2', 'b', 'halt', 111.234);
    const kennel = kennelOf(day);
    let n = 0;
    const facts = keepSoundFacts(
      kennel.record,
      { heard: heard(whistles, { bytes: 9000 }), joins: JOINS },
      () => `w${n++}`,
    );
    const marks = facts.filter(({ kind }) => kind === 'film-marked').map(({ body }) => body);
    expect(marks).toEqual([
      { mark: 'w0', film: 'f', rep: 'a', what: 'whistle', atS: 55, frameS: 0.05, heard: true },
      { mark: 'w1', film: 'f', rep: 'b', what: 'whistle', atS: 110, frameS: 0.05, heard: true },
    ]);
    const amended = facts.filter(({ kind }) => kind === 'rep-amended');
    expect(amended).toHaveLength(1);
    // Of a send of 60 m, 42 m are 0.7; the cast is given where the dog stands.
    expect(amended[0]?.body).toMatchObject({
      rep: 'b',
      legs: [
        {
          skill: 'stop',
          latencyS: 1.23,
          ask: { distanceM: 42, wayFraction: 0.7 },
          planned: { distanceM: 30, wayFraction: 0.5 },
        },
        { skill: 'cast-left', ask: { distanceM: 42, castM: 10 }, planned: { distanceM: 30, castM: 10 } },
      ],
    });
  });

  it('says nothing of a stop blown about where it was planned, nor of one with no halt marked', () => {
    const { day, whistles } = morning();
    day.write('film-linked', { film: 'f', session: 's', name: 'hedge.mp4', bytes: 9000 });
    // 3.6 + 6 * 4.4 = 30 m: as asked.
    day.write('film-marked', { mark: '1', film: 'f', rep: 'a', what: 'sent', atS: 49.4, frameS: 0.04 });
    const { record } = kennelOf(day);
    const kept = { heard: heard(whistles, { bytes: 9000 }), joins: JOINS };
    const kinds = keepSoundFacts(record, kept, () => 'k').map(({ kind }) => kind);
    expect(kinds).not.toContain('rep-amended');
  });
});
