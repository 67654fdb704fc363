import type { Tongue } from '../tongue.ts';

/** Written out again, as this package knows nobody; a test where both meet holds them together. */
type StartingLayoutCode =
  | 'fence-line'
  | 'memory-by-wall'
  | 'angled-cast-off-track'
  | 'diversion-mark'
  | 'blind-in-cover'
  | 'strip-to-cross'
  | 'water-edge'
  | 'post-grid';
type FeatureCode = 'fence' | 'wall' | 'track' | 'cover' | 'strip' | 'strip-far' | 'water' | 'steep-bank';

interface StartingWords {
  readonly name: string;
  readonly terrain: string;
  readonly purpose: string;
  readonly caution: string;
}

/** Words of the layouts to begin from (common practice, no source). */
export function groundStartingWords(t: Tongue) {
  const layouts: Readonly<Record<StartingLayoutCode, StartingWords>> = {
    'fence-line': {
      name: 'Fence line',
      terrain: 'a fence or hedge with clear ground beside it',
      purpose: 'A straight line out, with an edge to keep to.',
      caution:
        'Walk the fence first for loose wire. A dog that learns the edge must be shown open ground next.',
    },
    'memory-by-wall': {
      name: 'Memory by a wall',
      terrain: 'a wall or bank that shows from afar',
      purpose: `Two memories that the dog can find again by the wall.`,
      caution: `Lay them a few paces short of the wall, so that the dog need not jump up at it.`,
    },
    'angled-cast-off-track': {
      name: 'Angled cast off a track',
      terrain: 'a mown track or ride with even ground to both sides',
      purpose: 'Stop on the track, then a cast that is neither square nor straight back. Both sides alike.',
      caution: 'See that the track is closed to riders, cycles and vehicles while you work.',
    },
    'diversion-mark': {
      name: 'Diversion mark',
      terrain: 'open short ground',
      purpose: 'A mark falls to one side; the dog is sent for the blind and leaves the mark.',
      caution: 'The thrower stands well behind the mark, and picks it up by hand if the dog turns to it.',
    },
    'blind-in-cover': {
      name: 'Blind in cover',
      terrain: 'a belt of cover with clear ground before it',
      purpose: 'A line that holds into cover, with the wind to help at the end.',
      caution: 'Look through the cover for wire, holes and game before you lay it.',
    },
    'strip-to-cross': {
      name: 'Strip to cross',
      terrain: 'a strip of stubble, long grass or a shallow ditch across the way',
      purpose: 'To go through a change of ground and on, the same straight way.',
      caution: 'Walk the strip. A ditch must be shallow enough to walk through, with sound sides.',
    },
    'water-edge': {
      name: 'Water’s edge',
      terrain: 'a shallow, level bank',
      purpose: `Steady beside water: the ${t.dummies} lie on the bank, short of it.`,
      caution: 'No young dog alone in water, none in cold or moving water, and no sending near a steep bank.',
    },
    'post-grid': {
      name: 'Post grid',
      terrain: 'a small fenced field',
      purpose: 'Five posts to be sent to in any order, from one place.',
      caution: 'Posts with blunt tops, taller than the dog is running, so that it sees them.',
    },
  };
  const features: Readonly<Record<FeatureCode, string>> = {
    fence: 'fence',
    wall: 'wall',
    track: 'track',
    cover: 'edge of cover',
    strip: 'strip, near side',
    'strip-far': 'strip, far side',
    water: 'water',
    'steep-bank': 'steep bank',
  };
  return {
    starting: (code: StartingLayoutCode): StartingWords => layouts[code],
    feature: (code: FeatureCode): string => features[code],
  };
}
