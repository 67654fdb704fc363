/** A span with what was measured of it, until its company is known. */
export interface BlastCandidate {
  startS: number;
  endS: number;
  pitchHz: number;
  /** Height of its tone, dB of the spectrum's own unit. */
  levelDb: number;
  own: Float64Array;
  /** Log odds of a blast from these figures alone. */
  alone: number;
}

/** What is measured of a span among its neighbours. */
export const CONTEXT_FEATURES = [
  'otherNotes',
  'over',
  'company',
  'echoDb',
  'echoNear',
  'forerunner',
  'regular',
  'longCompany',
] as const;

/** How far to both sides neighbours count. */
export const CONTEXT_S = 1.2;
/** How long what follows is waited for. */
export const AFTER_S = 4;
const SAME_PITCH = 0.025;
const ECHO_PITCH = 0.06;
const OTHER_PITCH = 0.045;
const ECHO_WITHIN_S = 0.6;

const step = (x: number) => 1 / (1 + Math.exp(-x));

/** Figures of one span among its company, in the order of `CONTEXT_FEATURES`. */
export function contextFeatures(one: BlastCandidate, company: readonly BlastCandidate[]): Float64Array {
  let otherNotes = 0;
  let over = 0;
  let alike = 0;
  let echoDb = 0;
  let echoNear = 0;
  let forerunner = 0;
  let longCompany = 0;
  const starts: number[] = [];
  const lastsS = one.endS - one.startS;
  for (const other of company) {
    const gapS = Math.max(other.startS - one.endS, one.startS - other.endS);
    if (gapS > CONTEXT_S) continue;
    const away = Math.abs(Math.log(other.pitchHz / one.pitchHz));
    const louderDb = other.levelDb - one.levelDb;
    const otherLastsS = other.endS - other.startS;
    if (gapS < 0) {
      if (away > OTHER_PITCH && Math.abs(away - Math.LN2) > 0.04)
        over += step((louderDb + 6) / 3) * Math.min(1, -gapS / lastsS);
    } else if (away > OTHER_PITCH) otherNotes += Math.exp(-gapS / 0.4) * step((louderDb + 9) / 3);
    if (away < SAME_PITCH && Math.abs(louderDb) < 6 && gapS >= 0) {
      alike += 1;
      if (otherLastsS > 0.33) longCompany = 1;
      if (Math.abs(Math.log(otherLastsS / lastsS)) < 0.35) starts.push(other.startS - one.startS);
    }
    if (away < ECHO_PITCH && louderDb > 0) {
      const afterS = one.startS - other.endS;
      if (other.startS < one.startS - 0.01 && afterS < ECHO_WITHIN_S) {
        echoDb = Math.max(echoDb, louderDb);
        echoNear = Math.max(echoNear, step((louderDb - 5) / 2) * (1 - Math.max(0, afterS) / ECHO_WITHIN_S));
      } else if (other.startS >= one.startS && other.startS - one.endS < 0.15) {
        forerunner = Math.max(forerunner, louderDb);
      }
    }
  }
  return Float64Array.of(
    Math.min(3, otherNotes),
    Math.min(2, over),
    Math.min(4, alike) / 2,
    Math.min(25, echoDb) / 10,
    echoNear,
    Math.min(25, forerunner) / 10,
    regularity(starts),
    longCompany,
  );
}

/** How many neighbours come at a whole number of the shortest interval: what sings, sings in time. */
function regularity(startsS: readonly number[]): number {
  const shortestS = Math.min(...startsS.map(Math.abs));
  if (startsS.length < 2) return 0;
  const inTime = startsS.filter((startS) => {
    const beats = startS / shortestS;
    return Math.abs(beats - Math.round(beats)) < 0.12;
  });
  return Math.min(4, inTime.length - 1) / 2;
}
