import type { Tongue } from '../tongue.ts';

/** Why the device does not say where it is. */
export type WalkFault = 'refused' | 'no-signal' | 'none' | 'too-far';

/** Words of laying a ground out by walking it with the phone. */
export function groundWalkWords(t: Tongue) {
  const faults: Readonly<Record<WalkFault, string>> = {
    refused:
      'The browser may not tell where you are. Allow location for this page in its settings, or put things down by distance and bearing.',
    'no-signal': 'No position yet: open sky helps. What you have put down stays.',
    none: 'This device cannot tell where it is. Put things down by distance and bearing.',
    'too-far':
      'You are farther from where you began than a field reaches. Begin again with where you stand, or go back.',
  };
  return {
    title: 'Walk it',
    teach:
      'Stand still at each place and put it down where you stand. Figures settle while you stand: give each half a minute.',
    start: 'Begin',
    stop: 'Stop',
    waiting: 'Waiting for the first position',
    /** The figure of this moment, and what standing still has made of it. */
    now: (accuracyM: number): string => `This moment within ${t.length(accuracyM)}.`,
    standing: (fixes: number, radiusM: number): string =>
      `Standing: ${t.count(fixes, 'position', 'positions')} averaged, within ${t.length(radiusM)} nine times in ten.`,
    moving: 'You moved: averaging begins again.',
    first: 'Begin with where you stand when you send.',
    from: (distanceM: number, bearing: string): string =>
      `${t.length(distanceM)} at ${bearing} from where you stand when you send.`,
    put: 'Put down here:',
    handler: 'You',
    send: 'The dog',
    chosen: (name: string): string => `Move ${name} here`,
    placed: (name: string, radiusM: number): string => `${name} put down, within ${t.length(radiusM)}.`,
    rough: 'Two places measured like this may each be off by that much: pace out what must be exact.',
    fault: (fault: WalkFault): string => faults[fault],
  };
}
