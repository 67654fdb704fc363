/** One cue of a WebVTT file: what is said, and from when to when, seconds. */
export interface VttCue {
  readonly startS: number;
  readonly endS: number;
  readonly text: string;
}

const HOUR_S = 3600;
const MINUTE_S = 60;

/**
 * A WebVTT file of cues (W3C, WebVTT: The Web Video Text Tracks Format; the same form for chapters and captions). Cues are written by their start,
 * the longer first; a cue that would end no later than it starts lasts a millisecond. Any text may be handed in: `&`, `<` and `>` are written as
 * character references, so that no text can end a cue or be taken for a time line; lines stay lines, blank ones
 * are left out, since a blank line ends a cue; other control characters, NUL among them, become spaces. Throws RangeError where a time is no number from 0.
 */
export function vttText(cues: readonly VttCue[]): string {
  const inMs = cues.map(({ startS, endS, text }) => {
    const startMs = wholeMs('startS', startS);
    return { startMs, endMs: Math.max(wholeMs('endS', endS), startMs + 1), text };
  });
  const blocks = inMs
    .toSorted((a, b) => a.startMs - b.startMs || b.endMs - a.endMs)
    .map(({ startMs, endMs, text }) => `${vttTime(startMs)} --> ${vttTime(endMs)}\n${cueText(text)}\n`);
  return ['WEBVTT\n', ...blocks].join('\n');
}

/** What a reader of the file gets to see of a text: its lines, trimmed, without blank ones and without control characters. */
export function shownLines(text: string): readonly string[] {
  return text
    .replace(/\p{Cc}/gu, (sign) => (sign === '\n' || sign === '\r' ? sign : ' '))
    .split(/\r\n|\r|\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '');
}

const REFERENCES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };

function cueText(text: string): string {
  const lines = shownLines(text).map((line) => line.replace(/[&<>]/g, (sign) => REFERENCES[sign] ?? sign));
  return lines.length === 0 ? '-' : lines.join('\n');
}

function wholeMs(name: string, s: number): number {
  if (!(s >= 0) || !Number.isFinite(s)) throw new RangeError(`${name}: expected a number from 0, got ${s}`);
  return Math.round(s * 1000);
}

/** `HH:MM:SS.mmm`; more than two digits of hours where they are needed. */
function vttTime(ms: number): string {
  const two = (n: number): string => String(n).padStart(2, '0');
  const wholeS = Math.floor(ms / 1000);
  const hours = Math.floor(wholeS / HOUR_S);
  const minutes = Math.floor((wholeS % HOUR_S) / MINUTE_S);
  return `${two(hours)}:${two(minutes)}:${two(wholeS % MINUTE_S)}.${String(ms % 1000).padStart(3, '0')}`;
}

/** A moment of a film as WebVTT writes it: what people and programs that cut films read alike. */
export const filmTime = (s: number): string => vttTime(wholeMs('s', s));
