import type * as v from 'valibot';
import type { Fact } from '../fact.ts';
import { filmLinkedSchema, filmMarkedSchema, filmUnlinkedSchema, filmUnmarkedSchema } from './film-schema.ts';
import {
  dogAddedSchema,
  dogRestedSchema,
  goalSetSchema,
  groundAddedSchema,
  handlerAddedSchema,
  levelStatedSchema,
} from './kennel-schema.ts';
import { layoutDrawnSchema } from './layout-schema.ts';
import { sessionPlannedSchema } from './plan-schema.ts';
import { groundPutAwaySchema, layoutPutAwaySchema } from './put-away-schema.ts';
import {
  repAmendedSchema,
  repEndedSchema,
  repRecordedSchema,
  repRestoredSchema,
  repStruckSchema,
} from './rep-schema.ts';
import {
  breakStartedSchema,
  breakTakenSchema,
  sessionClosedSchema,
  sessionFocusedSchema,
  sessionOpenedSchema,
} from './session-schema.ts';
import { soundDroppedSchema, soundHeardSchema, soundJoinedSchema } from './sound-schema.ts';
import { voiceDroppedSchema, voiceNotedSchema } from './voice-schema.ts';

/** The schema of the body of every kind of fact that is known here. Those from `session-focused` on are our own. */
export const BODY_SCHEMAS = {
  'handler-added': handlerAddedSchema,
  'dog-added': dogAddedSchema,
  'ground-added': groundAddedSchema,
  'layout-drawn': layoutDrawnSchema,
  'session-opened': sessionOpenedSchema,
  'rep-recorded': repRecordedSchema,
  'break-taken': breakTakenSchema,
  'session-closed': sessionClosedSchema,
  'rep-amended': repAmendedSchema,
  'rep-struck': repStruckSchema,
  'goal-set': goalSetSchema,
  'session-focused': sessionFocusedSchema,
  'break-started': breakStartedSchema,
  'rep-ended': repEndedSchema,
  'session-planned': sessionPlannedSchema,
  'rep-restored': repRestoredSchema,
  'voice-noted': voiceNotedSchema,
  'voice-dropped': voiceDroppedSchema,
  'dog-rested': dogRestedSchema,
  'level-stated': levelStatedSchema,
  'ground-put-away': groundPutAwaySchema,
  'layout-put-away': layoutPutAwaySchema,
  'film-linked': filmLinkedSchema,
  'film-unlinked': filmUnlinkedSchema,
  'film-marked': filmMarkedSchema,
  'film-unmarked': filmUnmarkedSchema,
  'sound-heard': soundHeardSchema,
  'sound-joined': soundJoinedSchema,
  'sound-dropped': soundDroppedSchema,
} as const;

export type KnownKind = keyof typeof BODY_SCHEMAS;

/** The body that belongs to each known kind. */
export type FactBodies = { readonly [Kind in KnownKind]: v.InferOutput<(typeof BODY_SCHEMAS)[Kind]> };

/** A fact of one known kind, its body typed. */
export type FactOf<Kind extends KnownKind> = Fact & { readonly kind: Kind; readonly body: FactBodies[Kind] };

export const KNOWN_KINDS = Object.keys(BODY_SCHEMAS) as readonly KnownKind[];

/** Whether this program knows the kind; facts of other kinds are kept and counted, and mean nothing to it. */
export function isKnownKind(kind: string): kind is KnownKind {
  return Object.hasOwn(BODY_SCHEMAS, kind);
}

/**
 * Whether a fact is of the given kind. Only looks at the kind: the body is typed because facts come into the program
 * through `validateFact` (from a file, a store, the net) or `makeFact`, both of which check it.
 */
export function isFactOf<Kind extends KnownKind>(fact: Fact, kind: Kind): fact is FactOf<Kind> {
  return fact.kind === kind;
}
