import type { Tongue } from '../tongue.ts';

type ThingKind = 'post' | 'dummy' | 'hazard' | 'jump' | 'other';

/** What is wrong with what was typed at a thing. */
export type PlaceFault = 'distance-unreadable' | 'distance-far' | 'bearing-unreadable' | 'wind-unreadable';

/** Words of drawing a layout. */
export function groundEditorWords(t: Tongue) {
  const kinds: Readonly<Record<ThingKind, string>> = {
    post: 'Post',
    dummy: t.dummy === 'dummy' ? 'Dummy' : 'Bumper',
    hazard: 'Hazard',
    jump: 'Jump',
    other: 'Marker',
  };
  /** A bearing, north as 0 and never as 360. */
  const bearing = (deg: number): string => `${t.number(Math.round(deg) % 360)}°`;
  const unit = t.units === 'yards' ? 'yards' : t.dialect === 'en-US' ? 'meters' : 'metres';
  const faults: Readonly<Record<PlaceFault, string>> = {
    'distance-unreadable': `A number of ${unit}, more than nothing.`,
    'distance-far': `Too far: a layout reaches 2,000 m at most.`,
    'bearing-unreadable': 'A bearing from 0 to 360, clockwise from north.',
    'wind-unreadable': 'A number, or nothing.',
  };
  return {
    board: 'Drawing of the layout',
    boardHint:
      'Tab goes from thing to thing. Arrow keys move the one you are on by one, with Shift by five. Letters put things down; see Keys.',
    you: 'You',
    dog: 'The dog',
    toolsLabel: 'Tools',
    undo: 'Undo',
    redo: 'Redo',
    add: 'Put down',
    kind: (kind: ThingKind): string => kinds[kind],
    blind: 'Blind',
    sendApart: 'Send from elsewhere',
    sendTogether: 'Send from beside you',
    snap: 'Whole paces',
    snapNow: 'To whole paces',
    northUp: 'North up',
    sendUp: 'Way out up',
    wider: 'Wider',
    fit: 'Fit',
    save: 'Save',
    saved: 'Saved',
    keptInMemory: 'Not on disk yet; it is kept and tried again.',
    unsaved: 'Not saved yet',
    draft: 'This is what you drew last time and did not save.',
    dropDraft: 'Take the saved one',
    beginAfresh: 'Begin afresh',
    print: 'Print',
    nothingChosen: 'Tap something on the drawing, or Tab to it.',
    chosen: {
      name: 'What it is called',
      distance: `Distance, ${unit}`,
      bearing: 'Bearing, °',
      how: 'How it gets there',
      hows: { placed: 'Placed', thrown: 'Thrown', launched: 'Launched' },
      blind: 'The dog does not see it put there',
      remove: 'Take away',
      figures: (distanceM: number, paces: number, bearingDeg: number): string =>
        `${t.length(distanceM)}, ${t.count(Math.round(paces), 'pace', 'paces')}, at ${bearing(bearingDeg)}`,
      fromYou: (distanceM: number, bearingDeg: number): string =>
        `From you ${t.length(distanceM)} at ${bearing(bearingDeg)}`,
      nearest: (name: string, clearanceM: number, gapDeg: number): string =>
        `Nearest to its line: ${name}, ${t.length(clearanceM)} off it, ${t.number(gapDeg)}° apart`,
      /** The same, short, for a table. */
      near: (name: string, clearanceM: number, gapDeg: number): string =>
        `${name}, ${t.length(clearanceM)}, ${t.number(gapDeg)}°`,
      alone: 'Nothing else lies out',
      wind: (acrossMPerS: number): string =>
        Math.abs(acrossMPerS) < 0.5
          ? 'No wind across to speak of'
          : `Wind across ${t.wind(Math.abs(acrossMPerS))} from the ${acrossMPerS > 0 ? 'left' : 'right'}`,
      handler: 'Everything is measured from where the dog is sent.',
      fault: (fault: PlaceFault): string => faults[fault],
    },
    wind: {
      title: 'Wind',
      from: 'From, °',
      speed: `Speed, ${t.units === 'yards' ? 'mph' : 'm/s'}`,
      /** Miles an hour in one metre a second, where that is what is shown. */
      calm: 'Leave both empty where it does not matter.',
    },
    warnings: {
      title: 'In the way',
      care: 'Take care',
      more: (n: number): string => `And ${t.number(n)} more. Choose a thing to see its own.`,
      atHandler: (name: string): string => `${name} lies at your feet: no line goes there.`,
    },
    table: {
      title: 'Everything on it',
      thing: 'What',
      lies: 'From the dog',
      nearest: 'Nearest to its line',
      none: 'Nothing put down yet.',
    },
    layoutName: 'Name of this layout',
    copy: {
      title: 'Copy to another ground',
      to: 'To',
      do: 'Copy',
      done: (ground: string): string => `Copied to ${ground}.`,
      none: 'There is no other ground yet.',
    },
    keys: {
      title: 'Keys',
      list: [
        ['Tab', 'next thing'],
        ['Arrows', t.units === 'yards' ? 'move by 1 yd' : 'move by 1 m'],
        ['Shift and arrows', t.units === 'yards' ? 'move by 5 yd' : 'move by 5 m'],
        ['P, D, B, H, J, M', `post, ${t.dummy}, blind, hazard, jump, marker`],
        ['S', 'to whole paces'],
        ['Delete', 'take away'],
        ['Ctrl Z, Ctrl Y', 'undo, redo'],
        ['Escape', 'let go'],
      ] as const,
    },
    said: {
      added: (name: string): string => `${name} put down.`,
      removed: (name: string): string => `${name} taken away.`,
      moved: (name: string, figures: string): string => `${name}: ${figures}.`,
      undone: 'Undone.',
      redone: 'Done again.',
    },
  };
}
