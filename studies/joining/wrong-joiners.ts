import type { BlastSeen, Join, Joiner, SessionSeen } from './joiner.ts';

/** Legs for which a whistle is blown, with their taps. */
const whistled = ({ reps }: SessionSeen) =>
  reps.flatMap(({ rep, legs }) =>
    legs.flatMap(({ skill, tappedAtS }, leg) =>
      skill === 'stop' || skill === 'recall' ? [{ rep, leg, skill, tappedAtS }] : [],
    ),
  );

const long = ({ kind }: BlastSeen) => kind === 'long';

/** Wrong on purpose: the first stop is the first long blast, the second the second, and so on, always sure. */
export const inOrder: Joiner = {
  name: 'in order',
  join: (seen) => {
    const blasts = seen.whistles.filter(long);
    return whistled(seen)
      .filter(({ skill }) => skill === 'stop')
      .flatMap(({ rep, leg }, n): Join[] => {
        const blast = blasts[n];
        return blast === undefined ? [] : [{ rep, leg, startS: blast.startS, isSure: true }];
      });
  },
};

/** Wrong on purpose: the last blast before the tap by the clock as told, always sure. */
export const lastBeforeTap: Joiner = {
  name: 'last before the tap',
  join: (seen) =>
    whistled(seen).flatMap(({ rep, leg, skill, tappedAtS }): Join[] => {
      const fromS = seen.starts?.atS ?? (seen.reps[0]?.legs[0]?.tappedAtS ?? 0) - 60;
      const wanted = seen.whistles.filter((blast) => long(blast) === (skill === 'stop'));
      const blast = wanted.findLast(({ startS }) => startS + fromS <= tappedAtS);
      return blast === undefined ? [] : [{ rep, leg, startS: blast.startS, isSure: true }];
    }),
};

/** Wrong on purpose: never sure of anything, so that nothing is ever joined unasked. */
export const neverSure: Joiner = {
  name: 'never sure',
  join: (seen) => inOrder.join(seen).map((join) => ({ ...join, isSure: false })),
};
