import type { Plan, PlannedLeg, PlannedRep } from '@sedgeline/engine/session';
import type { PlanStrip } from '../views/plan-view.ts';

const has = ({ legs }: PlannedRep, ...skills: readonly PlannedLeg['skill'][]): boolean =>
  legs.some(({ skill }) => skills.includes(skill));

/** The figures over a plan, counted from its reps as they stand. `cleanShareWanted` is the record's, 0..1. */
export function planStrip(plan: Plan, cleanShareWanted: number): PlanStrip {
  const { reps, breaks, minutes, minutesExpected } = plan;
  const sends = reps.filter((rep) => has(rep, 'line', 'mark', 'hunt'));
  const stops = reps.flatMap(({ legs }) => legs.filter(({ skill }) => skill === 'stop'));
  return {
    minutes: { ...minutesExpected, of: minutes },
    breaksAfter: breaks.map(({ afterRep }) => afterRep),
    casts: {
      left: reps.filter((rep) => has(rep, 'cast-left')).length,
      right: reps.filter((rep) => has(rep, 'cast-right')).length,
    },
    weaker: weakerSide(plan),
    sends: { clean: sends.filter((rep) => !has(rep, 'stop')).length, all: sends.length },
    cleanShareWanted,
    stops: {
      count: stops.length,
      distancesM: stops.flatMap(({ ask: { distanceM } }) => (distanceM === undefined ? [] : [distanceM])),
      ways: stops.flatMap(({ ask: { wayFraction } }) => (wayFraction === undefined ? [] : [wayFraction])),
    },
    most: mostAsked(plan),
  };
}

function weakerSide({ reps }: Plan): PlanStrip['weaker'] {
  const reason = reps.flatMap((rep) => rep.reasons).find(({ code }) => code === 'weaker-side');
  if (reason?.skill === 'cast-left') return 'left';
  return reason?.skill === 'cast-right' ? 'right' : null;
}

/** Something that never went well asks more than any step; among steps the greatest. */
function mostAsked({ reps }: Plan): PlanStrip['most'] {
  let most: PlanStrip['most'] = null;
  const size = (stretch: number | null): number => stretch ?? Number.POSITIVE_INFINITY;
  for (const { n, legs } of reps)
    for (const { skill, stretch } of legs)
      if (most === null || size(stretch) > size(most.stretch)) most = { n, skill, stretch };
  return most;
}
