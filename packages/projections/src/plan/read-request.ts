import { type Ask, checkAsk, SKILLS, type Skill } from '@sedgeline/engine/ability';
import type { PlanRequest } from '@sedgeline/engine/session';
import { readTime } from '@sedgeline/journal';

/** A request that may be planned for, or the first thing wrong with it: the field, and what was expected there. */
export type RequestReading =
  | { readonly ok: true; readonly request: PlanRequest }
  | { readonly ok: false; readonly field: string; readonly message: string };

type Fields = Readonly<Record<string, unknown>>;

/** The first field that is not good. */
class NotGood extends Error {
  readonly field: string;
  constructor(field: string, expected: string, got: unknown) {
    super(`${field}: expected ${expected}, got ${got === undefined ? 'nothing' : JSON.stringify(got)}`);
    this.field = field;
  }
}

/** Longest session that may be asked for, minutes: a day (what can be meant; our judgement, 2026). */
const MOST_MINUTES = 1440;
const MOST_KIT = 100;

/**
 * Reads the request of a plan (contract, "A plan"): `{dog, minutes, ground?, layout?, skills?, kit?, weather?, focus?,
 * notBefore?}`. Unknown fields are let pass. Whether the dog and the layout are there is not looked at.
 */
export function readPlanRequest(value: unknown): RequestReading {
  try {
    return { ok: true, request: requestOf(objectAt('request', value)) };
  } catch (error) {
    if (!(error instanceof NotGood)) throw error;
    return { ok: false, field: error.field, message: error.message };
  }
}

function requestOf(fields: Fields): PlanRequest {
  const { dog, minutes, ground, layout, skills, kit, weather, focus, notBefore } = fields;
  return {
    dog: idAt('dog', dog),
    minutes: minutesAt(minutes),
    ...given({ ground, layout }, idAt),
    ...given({ skills }, skillsAt),
    ...given({ kit }, kitAt),
    ...given({ weather }, weatherAt),
    ...given({ focus }, focusAt),
    ...given({ notBefore }, timeAt),
  };
}

/** Reads the fields that are there. */
function given<Key extends string, Value>(
  fields: Readonly<Record<Key, unknown>>,
  read: (field: string, value: unknown) => Value,
): Partial<Record<Key, Value>> {
  const there = Object.entries(fields).filter(([, value]) => value !== undefined);
  return Object.fromEntries(there.map(([key, value]) => [key, read(key, value)])) as Partial<
    Record<Key, Value>
  >;
}

function objectAt(field: string, value: unknown): Fields {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value as Fields;
  throw new NotGood(field, 'an object in braces', value);
}

function idAt(field: string, value: unknown): string {
  if (typeof value === 'string' && value !== '') return value;
  throw new NotGood(field, 'an id (text that is not empty)', value);
}

function numberAt(field: string, value: unknown, least: number, most: number): number {
  if (typeof value === 'number' && value >= least && value <= most) return value;
  throw new NotGood(field, `a number from ${least} to ${most}`, value);
}

function minutesAt(value: unknown): number {
  const minutes = numberAt('minutes', value, 0, MOST_MINUTES);
  if (minutes > 0) return minutes;
  throw new NotGood('minutes', `a number over 0, up to ${MOST_MINUTES}`, value);
}

function countAt(field: string, value: unknown): number {
  const count = numberAt(field, value, 0, MOST_KIT);
  if (Number.isInteger(count)) return count;
  throw new NotGood(field, `a whole number from 0 to ${MOST_KIT}`, value);
}

function skillAt(field: string, value: unknown): Skill {
  const skill = SKILLS.find((one) => one === value);
  if (skill !== undefined) return skill;
  throw new NotGood(field, `one of ${SKILLS.join(', ')}`, value);
}

function skillsAt(field: string, value: unknown): Skill[] {
  if (!Array.isArray(value)) throw new NotGood(field, 'a list', value);
  return [...new Set(value.map((one, n) => skillAt(`${field}[${n}]`, one)))];
}

function kitAt(field: string, value: unknown) {
  const { posts, dummies } = objectAt(field, value);
  return { posts: countAt('kit.posts', posts ?? 0), dummies: countAt('kit.dummies', dummies ?? 0) };
}

function weatherAt(field: string, value: unknown) {
  const { airC, humidityPct, windMPerS, windFromDeg } = objectAt(field, value);
  const between = (least: number, most: number) => (name: string, one: unknown) =>
    numberAt(`${field}.${name}`, one, least, most);
  return {
    ...given({ airC }, between(-60, 60)),
    ...given({ humidityPct }, between(0, 100)),
    ...given({ windMPerS }, between(0, 60)),
    ...given({ windFromDeg }, between(0, 360)),
  };
}

function focusAt(field: string, value: unknown) {
  const { skill, ask } = objectAt(field, value);
  return { skill: skillAt(`${field}.skill`, skill), ...given({ ask }, () => askAt(`${field}.ask`, ask)) };
}

function askAt(field: string, value: unknown): Ask {
  const ask: Ask = objectAt(field, value);
  try {
    checkAsk(ask);
    return ask;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const [name = '', expected = 'a good value'] = error.message.split(': ');
    throw new NotGood(`${field}.${name}`, expected.replace(/^expected /, '').replace(/, got .*/, ''), value);
  }
}

function timeAt(field: string, value: unknown): string {
  if (typeof value === 'string' && readTime(value).ok) return value;
  throw new NotGood(field, 'a time such as 2026-03-01T09:00:00Z, years 1980 to 2200', value);
}
