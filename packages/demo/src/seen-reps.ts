import type { Fact, FactBodies, FactOf, KnownKind, Leg } from '@sedgeline/journal';
import { demoKennel } from './demo-kennel.ts';

/** The demo's record as tests look at it: its reps in order, struck ones left out, each with its session. */

export const bodiesOf = <Kind extends KnownKind>(
  facts: readonly Fact[],
  kind: Kind,
): readonly FactBodies[Kind][] =>
  facts.filter((fact): fact is FactOf<Kind> => fact.kind === kind).map(({ body }) => body);

export interface SeenRep {
  readonly dog: string;
  readonly ground: string;
  readonly session: string;
  readonly week: number;
  /** This dog's earlier sessions on this ground. */
  readonly earlierOnGround: number;
  readonly body: FactBodies['rep-recorded'];
}

const WEEK_MS = 7 * 86_400_000;

/** Every rep of a seed that was not struck. */
export function seenReps(seed: number): readonly SeenRep[] {
  const facts = demoKennel(seed);
  const struck = new Set(bodiesOf(facts, 'rep-struck').map(({ rep }) => rep));
  const sessions = new Map<string, Omit<SeenRep, 'body'>>();
  const visits = new Map<string, number>();
  const reps: SeenRep[] = [];
  for (const fact of facts) {
    if (fact.kind === 'session-opened') {
      const { session, dog, ground = '' } = fact.body as FactBodies['session-opened'];
      const visit = `${dog} ${ground}`;
      const earlierOnGround = visits.get(visit) ?? 0;
      visits.set(visit, earlierOnGround + 1);
      const week = Math.floor((Date.parse(fact.at) - Date.UTC(2026, 2, 21)) / WEEK_MS);
      sessions.set(session, { dog, ground, session, week, earlierOnGround });
    } else if (fact.kind === 'rep-recorded') {
      const body = fact.body as FactBodies['rep-recorded'];
      const seen = sessions.get(body.session);
      if (seen !== undefined && !struck.has(body.rep)) reps.push({ ...seen, body });
    }
  }
  return reps;
}

/** Share of items for which something holds. Throws RangeError for none: a share of nothing proves nothing. */
export function shareOf<Item>(items: readonly Item[], holds: (item: Item) => boolean): number {
  if (items.length === 0) throw new RangeError('items: expected at least one, got none');
  return items.filter(holds).length / items.length;
}

export const isGood = ({ grade }: Leg): boolean => grade === 'good';
