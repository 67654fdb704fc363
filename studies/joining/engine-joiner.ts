import { joinCalls, SURE_FROM, soundCalls } from '@sedgeline/engine/sound';
import { wantedCalls } from '../../packages/projections/src/sound/wanted-calls.ts';
import type { Join, Joiner } from './joiner.ts';

/** The program's own way, from the same taps and blasts. What is under an even chance is not even asked. */
export const engineJoiner: Joiner = {
  name: 'the engine',
  join: ({ reps, whistles, starts, lengthS }) => {
    const wants = reps.flatMap(({ rep, legs }) =>
      wantedCalls(legs, false).map((want) => ({ rep, leg: want.leg ?? 0, want })),
    );
    const calls = soundCalls(whistles);
    const joined = joinCalls({ wants: wants.map(({ want }) => want), calls, lengthS, starts, own: null });
    return wants.flatMap(({ rep, leg }, n): Join[] => {
      const best = joined.wants[n]?.[0];
      const call = best === undefined ? undefined : calls[best.call];
      if (best === undefined || call === undefined || best.sureness < 0.3) return [];
      return [{ rep, leg, startS: call.startS, isSure: best.sureness >= SURE_FROM && !joined.isCrowded }];
    });
  },
};
