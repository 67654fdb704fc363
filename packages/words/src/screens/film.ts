import { spanOfTime } from '../figures.ts';
import type { FilmFigureWords, FilmMarkName } from '../film.ts';
import type { TimeWords } from '../time.ts';
import type { Tongue } from '../tongue.ts';

const KIB = 1024;

/** What may be wrong with a film, or be told of it. */
export type FilmFault =
  | 'cannot-show'
  | 'no-picture'
  | 'not-a-film'
  | 'breaks-off'
  | 'cut-short'
  | 'no-sound'
  | 'no-index'
  | 'not-read'
  | 'no-hash';

/** Codings of pictures by the names that cameras and converters use. */
const CODINGS: Readonly<Record<string, string>> = {
  avc: 'H.264',
  hevc: 'HEVC (H.265)',
  vp8: 'VP8',
  vp9: 'VP9',
  av1: 'AV1',
  prores: 'ProRes',
  mpeg4: 'MPEG-4',
};

/** How it is known where a rep lies on a film. */
export type FilmPlaceFrom = 'marked' | 'other-reps' | 'file-time' | 'unknown';

/** A moment of a film to the millisecond: a frame is a few hundredths. */
const exactly = (atS: number): string => spanOfTime(atS, 3);

/** Words of the film bench. */
export function filmWords(t: Tongue, time: TimeWords, figures: FilmFigureWords) {
  const size = (bytes: number): string => {
    if (bytes < KIB ** 2) return `${t.number(bytes / KIB)} kB`;
    return bytes < KIB ** 3 ? `${t.number(bytes / KIB ** 2, 1)} MB` : `${t.number(bytes / KIB ** 3, 1)} GB`;
  };
  const marks = (n: number): string => t.count(n, 'mark', 'marks');
  const left = (leftS: number): string =>
    leftS < 60
      ? `about ${t.count(Math.max(1, Math.round(leftS)), 'second', 'seconds')} left`
      : `about ${t.count(Math.round(leftS / 60), 'minute', 'minutes')} left`;
  const fault = (
    code: FilmFault,
    more: { readonly coding?: string | null; readonly atS?: number; readonly saysS?: number } = {},
  ): string => {
    switch (code) {
      case 'cannot-show': {
        const coding = CODINGS[more.coding ?? ''];
        const written = coding === undefined ? 'in a way' : `in ${coding}, which`;
        return `This film is written ${written} this browser does not show. The film itself is fine. Open this page in another browser of the device, or turn the film into MP4 with H.264, or WebM; in many phones “most compatible” in the camera’s settings films that way from the start.`;
      }
      case 'no-picture':
        return 'There is sound in this file and no picture. Listen takes it as it is; here a film with a picture is wanted.';
      case 'not-a-film':
        return 'This file is no film that can be read, or it was cut off before its beginning was whole. Copy it again from the camera; MP4, MOV and WebM are read.';
      case 'breaks-off':
        return `The film breaks off or is damaged at ${exactly(more.atS ?? 0)}. What comes before can be used, and every mark is kept. Copying it again from the camera may bring the rest.`;
      case 'cut-short':
        return `The film says that it lasts ${spanOfTime(more.saysS ?? 0)}, and what is here ends at ${spanOfTime(more.atS ?? 0)}. What is here can be used; copying it again from the camera may bring the rest.`;
      case 'no-sound':
        return 'This film has no sound: a whistle can be marked where you see it blown, or not at all.';
      case 'no-index':
        return 'The frames of this file cannot be counted: a step is about a frame, and the ranges are wider for it.';
      case 'not-read':
        return 'The device does not hand the file out any more: it was moved, changed or deleted. Open it again; every mark is kept.';
      case 'no-hash':
        return 'The fingerprint could not be worked out: the film is known by its name and size alone until it is opened again.';
    }
  };
  return {
    title: (dog: string, atMs: number): string => `Film: ${dog}, ${time.date(atMs)}`,
    name: 'Film',
    toSession: 'To the session',
    notFound: 'This session is not in the record.',
    lead: 'The film stays where it is: only its name, size and fingerprint go into the record, and your marks.',
    noReps: 'No rep stands in this session: marks belong to reps. Put one in from memory in the session.',
    open: 'Open a film',
    openNamed: (name: string): string => `Open ${name}`,
    other: 'Another film',
    shut: 'Put the film away',
    films: {
      title: 'Films of this session',
      line: (bytes: number, lengthS: number | null, markCount: number, reps: number): string =>
        [
          size(bytes),
          lengthS === null ? '' : spanOfTime(lengthS),
          markCount === 0 ? 'no mark yet' : `${marks(markCount)} on ${t.count(reps, 'rep', 'reps')}`,
        ]
          .filter((part) => part !== '')
          .join(', '),
      unlink: (name: string): string => `Take ${name} off this session`,
      unlinked: (name: string, markCount: number): string =>
        `${name} was taken off, with ${marks(markCount)}.`,
      bringBack: (name: string): string => `Bring ${name} back`,
      show: (name: string): string => `Show the marks of ${name}`,
    },
    known: {
      own: (name: string): string => `${name} is a film of this session.`,
      known: (name: string): string => `Known again: ${name}.`,
      renamed: (now: string, before: string): string =>
        `Known again: ${now} is the film that was called ${before}.`,
      byName: (name: string): string => `Known by its name and size: ${name}.`,
      fresh: 'A new film. It joins the session with its first mark.',
      another: (wanted: string, bytes: number, got: string): string =>
        `This is another file than ${wanted} (${size(bytes)}), and its marks may not belong to ${got}. Open the right file, or mark this one as a film of its own. If a phone or a messenger only made the same film anew, and it begins at the same moment, say so.`,
      same: (wanted: string): string => `It is ${wanted} all the same`,
      checking: (name: string): string =>
        `As big as ${name}. Before you can mark, it is being compared to the last byte.`,
      takenOff: (name: string): string => `${name} was taken off this session. Bring it back to mark on it.`,
    },
    hash: {
      title: 'Fingerprint',
      progress: (share: number, leftS: number | null): string =>
        `Fingerprint: ${t.number(Math.floor(share * 100))} %${leftS === null ? '' : `, ${left(leftS)}`}`,
      stop: 'Not now',
    },
    fault,
    again: 'Go on from before there',
    player: {
      label: 'The film, its keys and its marks',
      reading: 'Reading the film',
      pictureLabel: 'The film',
      moment: (atS: number): string => exactly(atS),
      of: (lengthS: number): string => `of ${spanOfTime(lengthS)}`,
      seek: 'Place on the film',
      play: 'Play',
      pause: 'Pause',
      stepBack: 'Frame back',
      frame: 'Frame',
      jump: '5 s',
      stepOn: 'Frame on',
      back: 'Back 5 s',
      on: 'On 5 s',
      speed: 'Speed',
      space: 'space',
      rate: (rate: number): string => (rate === 1 ? 'Full speed' : `1/${t.number(1 / rate)}`),
      rateInWords: (rate: number): string =>
        rate === 1 ? 'Full speed' : `${t.number(1 / rate)} times slower`,
      inWords: (atS: number): string => {
        const minutes = Math.floor(atS / 60);
        return `${minutes === 0 ? '' : `${t.count(minutes, 'minute', 'minutes')} `}${t.count(Math.floor(atS % 60), 'second', 'seconds')}`;
      },
      bareSeconds: (s: number): string => `${t.number(s, 1)} s`,
      captions: 'Marks on the picture',
      loop: 'Loop',
      sound: 'Sound',
    },
    marks: {
      title: 'Mark',
      name: (what: FilmMarkName): string => figures.mark(what),
      keysHint:
        'Letters work on a keyboard; so do comma and full stop for a frame, arrows for 5 seconds, space to play, up and down for the rep.',
      made: (what: FilmMarkName, atS: number): string =>
        `${figures.mark(what)} at ${exactly(atS)}. Step and move it if it is a frame off.`,
      moved: (what: FilmMarkName, atS: number): string => `${figures.mark(what)} moved to ${exactly(atS)}.`,
      gone: (what: FilmMarkName, atS: number): string =>
        `${figures.mark(what)} at ${exactly(atS)} was taken off.`,
      undone: (what: FilmMarkName): string => `${figures.mark(what)} taken off.`,
      back: (what: FilmMarkName): string => `${figures.mark(what)} put back.`,
      undo: 'Undo the last mark',
      goTo: (what: FilmMarkName, atS: number): string => `${figures.mark(what)}, ${exactly(atS)}: go there`,
      here: (what: FilmMarkName): string => `Move ${figures.mark(what).toLowerCase()} here`,
      takeOff: (what: FilmMarkName, atS: number): string =>
        `Take off ${figures.mark(what).toLowerCase()} at ${exactly(atS)}`,
      putBackShort: 'Put it back',
      hereShort: 'Move here',
      takeOffShort: 'Take off',
      heard: 'heard by the program',
      markHeard: (atS: number): string => `Mark the whistle heard at ${exactly(atS)}`,
      none: 'No mark yet. Choose the rep, stop the film where it is sent, and press Sent.',
      list: (rep: number): string => `Marks of rep ${t.number(rep)}`,
    },
    reps: {
      title: 'Reps',
      rep: (n: number, all: number): string => `Rep ${t.number(n)} of ${t.number(all)}`,
      short: (n: number): string => `Rep ${t.number(n)}`,
      before: 'Rep before',
      next: 'Next rep',
      marks,
      place: (from: FilmPlaceFrom, atS: number | null, isOutside: boolean): string => {
        if (isOutside) return 'Not on this film, by the clock.';
        if (atS === null)
          return 'Where on the film is not known: mark where one rep is sent, and the others are looked for by the clock.';
        if (from === 'marked') return `From ${spanOfTime(atS)}`;
        return `About ${spanOfTime(atS)}, ${from === 'other-reps' ? 'by the reps that are marked' : 'by the time of the file'}`;
      },
      goTo: (n: number, place: string): string => `Go to rep ${t.number(n)}: ${place}`,
    },
    figures: {
      title: (rep: number): string => `What the marks of rep ${t.number(rep)} say`,
      none: 'Two marks of a rep make a figure: whistle and halt, sent and pick-up.',
      keep: (latencyS: number, before: number | null): string =>
        before === null
          ? `Keep ${figures.seconds(latencyS)} with the stop`
          : `Keep ${figures.seconds(latencyS)} with the stop, in place of ${figures.seconds(before)}`,
      kept: (latencyS: number): string => `Kept with the stop: ${figures.seconds(latencyS)}.`,
      takeOut: 'Take it out again',
      which:
        'Which stop a halt belongs to is not clear: there are not as many halts as stops. Nothing is kept with a leg until there are.',
    },
    exports: {
      title: 'To hand on',
      lead: (film: string): string => `From the marks on ${film}. No file holds the film itself.`,
      none: 'With the first mark there is something to hand on.',
      chapters: 'Chapters (WebVTT)',
      captions: 'Captions (WebVTT)',
      clips: 'Clip list (CSV)',
      summary: 'Summary',
      save: 'Save as text',
      copy: 'Copy',
      copied: 'Copied.',
      notCopied: 'The browser would not copy: mark the text and copy it by hand.',
      saved: (name: string): string => `Written to ${name}.`,
    },
  };
}

export type FilmWords = ReturnType<typeof filmWords>;
