import type { Detector, Recording } from './recording.ts';

/** Hears what is there, but says that everything begins 40 ms late: within what pairs, and far from the onsets that are asked for. */
export const lateBy40Ms =
  ({ truth }: Recording): Detector =>
  () => ({
    whistles: truth.whistles.map((whistle) => ({ ...whistle, startS: whistle.startS + 0.04 })),
    clicks: truth.clicks.map(({ timeS }) => ({ timeS: timeS + 0.04 })),
  });

/** Hears what is there, and takes an echo of each blast 0.2 s after its end for another, and the release of each click for a click. */
export const echoesToo =
  ({ truth }: Recording): Detector =>
  () => ({
    whistles: truth.whistles.flatMap((whistle) => {
      const echo = {
        ...whistle,
        startS: whistle.endS + 0.06,
        endS: whistle.endS + 0.2,
        kind: 'pip' as const,
      };
      return [whistle, echo];
    }),
    clicks: truth.clicks.flatMap(({ timeS }) => [{ timeS }, { timeS: timeS + 0.15 }]),
  });

/** Hears what is there with every length called a pip: right in time, wrong in kind. */
export const allPips =
  ({ truth }: Recording): Detector =>
  () => ({ whistles: truth.whistles.map((whistle) => ({ ...whistle, kind: 'pip' })), clicks: truth.clicks });
