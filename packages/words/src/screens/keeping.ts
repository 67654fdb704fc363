import type { Tongue } from '../tongue.ts';

/** What an export that was brought back held. */
export interface BroughtBack {
  readonly added: number;
  readonly known: number;
  /** Entries that say something else than the one of the same identity that is here. */
  readonly differing: number;
  readonly unreadable: number;
}

const MINUTES_IN_HOUR = 60;
const MINUTES_IN_DAY = 1440;

/** A span in the largest unit that it fills twice, or minutes. */
function span(t: Tongue, minutes: number): string {
  if (minutes >= 2 * MINUTES_IN_DAY) return t.count(Math.round(minutes / MINUTES_IN_DAY), 'day', 'days');
  if (minutes >= 2 * MINUTES_IN_HOUR) return t.count(Math.round(minutes / MINUTES_IN_HOUR), 'hour', 'hours');
  return t.count(minutes, 'minute', 'minutes');
}

/** Words about the record being kept on the device: its second copy, what came back from it, what is gone, a file brought back. */
export function keepingWords(t: Tongue) {
  const entries = (n: number): string => t.count(n, 'entry', 'entries');
  const was = (n: number): string => (n === 1 ? 'was' : 'were');
  return {
    restored: (n: number): string =>
      `${entries(n)} ${was(n)} gone from the record in this browser and ${was(n)} restored from the second copy on this device. Nothing else changed.`,
    missing: (n: number): string =>
      `${entries(n)} that ${was(n)} on this device the last time ${n === 1 ? 'is' : 'are'} gone, and the second copy does not have ${n === 1 ? 'it' : 'them'} either: the browser, or somebody, cleared what this site keeps. Bring back your last export in Setup.`,
    behind: (minutes: number): string =>
      `The clock of this device is ${span(t, minutes)} behind the last entry. Entries stay in the order you make them, but times and breaks will be wrong: set the clock right.`,
    read: 'I have read it',
    toSetup: 'To Setup',
    copy: 'A second copy is kept beside it on this device.',
    noCopy: 'There is no second copy: this browser does not allow one. Export the record now and then.',
    revoked:
      'The browser had promised to keep it and has taken that back. It may clear it when the device is full: export it now.',
    bringBack: 'Bring back an export',
    bringBackHint: 'Adds what the file has and the record lacks. Nothing here is replaced.',
    broughtBack: ({ added, known, differing, unreadable }: BroughtBack): string =>
      [
        `${entries(added)} added; ${t.number(known)} ${was(known)} here already.`,
        differing > 0
          ? `${entries(differing)} ${differing === 1 ? 'differs from the one' : 'differ from the ones'} here: what is here stays.`
          : '',
        unreadable > 0 ? `${t.count(unreadable, 'line', 'lines')} could not be read.` : '',
      ]
        .filter((part) => part !== '')
        .join(' '),
    notAnExport: 'There is not one entry in this file: it is no export of a record. Nothing was changed.',
  };
}

export type KeepingWords = ReturnType<typeof keepingWords>;
