import { describe, expect, it } from 'vitest';
import { foldRecord } from '../record/record-builder.ts';
import { TrainingDay } from '../work/training-day.fixture.ts';
import { filmBenchView } from './film-bench-view.ts';
import { heardWhistles } from './heard-whistles.ts';

const heard = (name: string, bytes: number) => ({
  sound: `sound of ${name}`,
  session: 's',
  from: 'file',
  name,
  lengthS: 60,
  bytes,
  whistles: [{ startS: 12, endS: 12.5, kind: 'long', pitchHz: 2900 }],
  clicks: [],
});
const joined = (name: string) => ({
  sound: `sound of ${name}`,
  session: 's',
  joins: [{ rep: 'a', leg: 0, atS: 12, by: 'handler' }],
});

/** A film with one rep, listened to; another file of the same session was listened to as well. */
const listenedDay = () =>
  new TrainingDay('2026-03-01T08:00:00Z')
    .dog('wren')
    .open('s', 'wren')
    .rep([{ skill: 'stop' }], { rep: 'a' })
    .write('film-linked', { film: 'm', session: 's', name: 'hedge.mp4', bytes: 900 })
    .write('sound-heard', heard('hedge.mp4', 900))
    .write('sound-joined', joined('hedge.mp4'))
    .write('sound-heard', heard('pocket.wav', 700))
    .write('sound-joined', { ...joined('pocket.wav'), joins: [{ rep: 'a', atS: 30, by: 'program' }] });

function found(day: TrainingDay) {
  const view = filmBenchView(foldRecord(day.facts), 's')!;
  return heardWhistles(view.films[0]!, view.sounds);
}

describe('whistles that were heard in a film', () => {
  it('those of this file, and of no other', () => {
    expect(found(listenedDay())).toEqual([{ rep: 'a', atS: 12 }]);
  });

  it('a click that was joined is no whistle', () => {
    const clicked = joined('hedge.mp4');
    const joins = [...clicked.joins, { rep: 'a', atS: 20, by: 'program' }];
    expect(found(listenedDay().write('sound-joined', { ...clicked, joins }))).toEqual([
      { rep: 'a', atS: 12 },
    ]);
  });

  it('none that is marked already, by hand or by the program', () => {
    const mark = { mark: 'k', film: 'm', rep: 'a', what: 'whistle', atS: 12.1, frameS: 0.04 };
    const day = listenedDay().write('film-marked', mark);
    expect(found(day)).toEqual([]);
    day.write('film-unmarked', { mark: 'k', film: 'm', rep: 'a' });
    expect(found(day)).toEqual([{ rep: 'a', atS: 12 }]);
    day.write('film-marked', { ...mark, mark: 'k2', what: 'halt' });
    expect(found(day)).toHaveLength(1);
  });

  it('none of a sound that counts for nothing any more', () => {
    const day = listenedDay().write('sound-dropped', { sound: 'sound of hedge.mp4', session: 's' });
    expect(found(day)).toEqual([]);
  });
});
