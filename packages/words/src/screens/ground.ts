import type { Tongue } from '../tongue.ts';
import { groundEditorWords } from './ground-editor.ts';
import { groundStartingWords } from './ground-starting.ts';
import { groundWalkWords } from './ground-walk.ts';

/** What can be wrong with the form of a new ground. */
export type GroundFault =
  | 'name-empty'
  | 'name-long'
  | 'name-taken'
  | 'lat-range'
  | 'lon-range'
  | 'half-place';

const FAULTS: Readonly<Record<GroundFault, string>> = {
  'name-empty': 'Give the ground a name.',
  'name-long': 'That is longer than 60 letters; a shorter name will do.',
  'name-taken': 'There is a ground of that name already. Add something to tell them apart.',
  'lat-range': 'A latitude is a number from -90 to 90.',
  'lon-range': 'A longitude is a number from -180 to 180.',
  'half-place': 'Give both figures, or neither.',
};

/** Words of the grounds and of what is drawn on them. */
export function groundWords(t: Tongue) {
  return {
    title: 'Grounds',
    teach: 'A ground is a place you train at. On each you can keep any number of layouts, drawn to scale.',
    open: 'Grounds and layouts',
    empty: 'No ground yet. Add the field you are in.',
    noGround: 'Drawn for no ground',
    counted: (layouts: number): string => t.count(layouts, 'layout', 'layouts'),
    things: (n: number): string => t.count(n, 'thing', 'things'),
    farthest: (lengthM: number): string => `farthest ${t.length(lengthM)}`,
    nameless: 'Layout',
    picture: 'Layout, drawn to scale',
    place: (latDeg: number, lonDeg: number): string =>
      `${t.number(Math.abs(latDeg), 4)}° ${latDeg < 0 ? 'S' : 'N'}, ${t.number(Math.abs(lonDeg), 4)}° ${lonDeg < 0 ? 'W' : 'E'}`,
    notFound: 'This ground or layout is not in the record.',
    back: 'All grounds',
    layouts: 'Layouts',
    noLayout: 'Nothing is drawn here yet. Begin from one of these, or from an empty field.',
    begin: 'Begin a new layout',
    emptyField: { name: 'Empty field', purpose: 'You, and nothing else yet.' },
    fits: (terrain: string): string => `For ${terrain}.`,
    add: {
      title: 'Add a ground',
      name: 'Name',
      lat: 'Latitude',
      lon: 'Longitude',
      optional: 'may be left empty',
      note: 'Note',
      here: 'Where I am now',
      save: 'Add',
      cancel: 'Not now',
    },
    away: {
      title: 'Put away',
      teach: 'Not offered any more. What was worked there keeps its name and its drawing.',
      put: 'Put away',
      putOf: (name: string): string => `Put away ${name}`,
      putGround: 'Put this ground away',
      isAway: 'This ground is put away: it is not offered for new sessions.',
      back: 'Take out again',
      backOf: (name: string): string => `Take out ${name} again`,
    },
    fault: (fault: GroundFault): string => FAULTS[fault],
    editor: groundEditorWords(t),
    walk: groundWalkWords(t),
    ...groundStartingWords(t),
  };
}

export type GroundWords = ReturnType<typeof groundWords>;
