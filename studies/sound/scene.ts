import type { AboutKind } from './about-the-handler.ts';
import type { Air } from './air-absorption.ts';
import type { BirdKind } from './birds.ts';
import type { DrawnKind } from './drawn-songs.ts';
import type { FarmKind } from './farm-sounds.ts';
import type { FieldBirdKind } from './field-songs.ts';
import type { Reverberation } from './reverberation.ts';
import type { SyrinxKind } from './syrinx.ts';
import type { VoiceKind } from './voices.ts';
import type { YardKind } from './yard-sounds.ts';

/** A span from which a figure is drawn evenly. */
export type Span = readonly [low: number, high: number];

/** The other sounds of a field that a scene can hold. */
export type DisturbanceKind =
  | BirdKind
  | DrawnKind
  | SyrinxKind
  | FarmKind
  | FieldBirdKind
  | YardKind
  | AboutKind
  | 'speech'
  | 'barks'
  | 'whine'
  | 'shot'
  | 'clank'
  | 'squeal'
  | 'shutter'
  | 'zip'
  | 'footsteps'
  | 'twig'
  | 'rustle'
  | 'crickets'
  | 'car';

/**
 * How a phone turns its gain: not at all, slowly, fast, as a limiter, shut to a tenth while nothing is loud (a gate), as a compressor that is
 * made up for and so pumps, or band by band to suppress noise.
 */
export type GainControl = 'none' | 'slow' | 'fast' | 'limiter' | 'gate' | 'pump' | 'suppressor';

/** How often a disturbance comes and how far it stands above the background (its peak over the background's 1.5 to 8 kHz). */
export interface Disturbance {
  kind: DisturbanceKind;
  perMinute: number;
  loudDb: Span;
}

/** Everything from which a recording is drawn. The name is the seed: the same scene, the same samples. */
export interface Scene {
  name: string;
  sampleRateHz: number;
  lastsS: number;
  air: Air;
  /** Blasts and clicks are set at in-band ratios from this span; null: there is neither. */
  snrDb: Span | null;
  whistles: readonly VoiceKind[];
  /** How far whistles and their handlers differ among one another. */
  breadth: 'usual' | 'wide';
  /** How blasts are put together: kinds by even chance and each length for itself, or in the rhythms of the work. */
  patterns: 'even' | 'working';
  /** Silence between one pattern or press and the next. */
  betweenS: Span;
  pitchHz: Span;
  longS: Span;
  pipS: Span;
  pipGapS: Span;
  /** Share of the patterns that another handler blows, at another pitch. */
  othersShare: number;
  distanceM: Span;
  clickModesHz: Span;
  releaseGapS: Span;
  /** First echo off the trees; null: open ground. */
  treesS: Span | null;
  /** How late a wall throws sounds back; null: there is none. */
  wallS: number | null;
  /** How the place rings; null: it is open. */
  rings: Reverberation | null;
  /** How far the wind at the microphone, below 300 Hz, stands above the background's 1.5 to 8 kHz. */
  windDb: number;
  buffetsPerMinute: number;
  /** How gusts come: they wander, stand up like a wall and die away, or come of eddies that carry eddies. */
  gusts: 'wandering' | 'fronts' | 'cascade';
  disturbances: readonly Disturbance[];
  /** Bands that the phone hears louder or softer. */
  tint: readonly { hz: number; db: number; q: number }[];
  gainControl: GainControl;
  /** Level of the background's 1.5 to 8 kHz before gain control, dB full scale: high, and loud sounds clip. */
  backgroundDbFs: number;
}
