import { spanOfTime } from '../figures.ts';
import type { Tongue } from '../tongue.ts';
import type { TradeWords } from '../trade.ts';
import type { Skill } from '../vocabulary.ts';
import type { VoiceFault } from './voice.ts';

/** Why nothing can be heard in a file, as the screens know it. */
export type ToldFileFault =
  | { readonly code: 'unreadable' }
  | { readonly code: 'no-sound' }
  | { readonly code: 'cant-decode'; readonly coding: string | null }
  | { readonly code: 'bad-rate'; readonly rateHz: number };

type CallKind = 'long' | 'pip' | 'pips' | 'click';
type EarNote = 'silent' | 'cut-off' | 'breaks-off' | 'low-rate';
type MicrophoneState = 'on' | 'muted' | 'away' | 'ended';

const CALLS: Readonly<Record<CallKind, string>> = {
  long: 'long blast',
  pip: 'pip',
  pips: 'run of pips',
  click: 'click',
};

const NOTES: Readonly<Record<EarNote, string>> = {
  silent: 'There is nothing but silence in it. Was the microphone covered, or off?',
  'cut-off':
    'The loudest parts are cut off, so pitches and edges may be off. Put the microphone farther away, or turn it down.',
  'breaks-off':
    'The file breaks off before its end. What was heard until there is shown; copy it again for the rest.',
  'low-rate': 'It was recorded at a low rate: whistles of a high pitch are not in it.',
};

const STATES: Readonly<Record<MicrophoneState, string>> = {
  on: 'The microphone listens.',
  muted: 'The microphone gives nothing: it is muted by the device. What comes now is missed.',
  away: 'The microphone was taken away: the phone was locked, or another program has it. What comes now is missed.',
  ended: 'The microphone is gone. Stop: what was heard until now is there.',
};

type MicrophoneFault = Extract<VoiceFault, 'refused' | 'no-microphone' | 'cannot'>;

const LIVE_FAULTS: Readonly<Record<MicrophoneFault, string>> = {
  refused:
    'The microphone was refused. Allow it for this page in the browser’s settings and try again; a film or a sound can be chosen all the same.',
  'no-microphone': 'No microphone was found on this device. A film or a sound can be chosen all the same.',
  cannot:
    'This browser cannot listen here. Record with the phone’s own recorder and choose the file afterwards.',
};

/** Words of Listen: a sound, a film or the microphone, and what of it belongs to which rep. */
export function listenScreenWords(t: Tongue, trade: TradeWords) {
  /** "3 min 12 s", "1 h 3 min 12 s": whole seconds that have gone by. */
  const at = (s: number): string => spanOfTime(Math.floor(s));
  const call = (kind: CallKind, count: number): string => {
    if (kind === 'pips') return `${t.number(count)} pips`;
    return kind === 'long' && count > 1 ? `${CALLS.long}, blown again` : CALLS[kind];
  };
  const leg = (skill: Skill | null): string => (skill === null ? 'click' : trade.skill(skill).toLowerCase());
  const repLeg = (rep: number, skill: Skill | null, dog: string | null): string =>
    `${dog === null ? '' : `${dog}, `}rep ${t.number(rep)}’s ${leg(skill)}`;
  const joined = (n: number): string =>
    n === 0
      ? 'nothing joined'
      : `${t.count(n, 'whistle or click', 'whistles and clicks')} with ${n === 1 ? 'its rep' : 'their reps'}`;
  const size = (bytes: number): string =>
    bytes < 1e6 ? `${t.number(Math.ceil(bytes / 1000))} kB` : `${t.number(bytes / 1e6, 1)} MB`;
  return {
    title: (dog: string): string => `Listen: ${dog}`,
    name: 'Listen',
    back: 'To the session',
    say: 'Whistle blasts and clicks are found in a sound, with their times, and joined to the reps. Nothing leaves this device, and nothing is kept before you say so.',
    reps: (n: number, untimed: number): string =>
      untimed === 0
        ? ''
        : `${t.count(untimed, 'rep', 'reps')} of ${t.number(n)} put in from memory: nothing tells when, so nothing is joined there.`,
    at,
    call,
    repLeg,
    file: {
      title: 'A film or a sound from this device',
      choose: 'Choose a file',
      drop: 'Or drop it here.',
      hint: 'Film (MP4, MOV, WebM) or sound (WAV, MP3, M4A, FLAC, Ogg). It is read piece by piece, however long it is.',
      working: (name: string): string => `Listening to ${name}`,
      share: (share: number): string => `${t.number(100 * share)} in 100`,
      left: (s: number): string =>
        s < 60
          ? `about ${t.number(Math.max(1, Math.ceil(s)))} s left`
          : `about ${t.number(Math.ceil(s / 60))} min left`,
      begun: 'Opening the file',
      cancel: 'Stop listening',
      cancelled: 'Stopped. Nothing was kept.',
      another: 'Listen to something else',
    },
    fault: (fault: ToldFileFault): string => {
      switch (fault.code) {
        case 'unreadable':
          return 'This file could not be read: it is no film or sound of a kind that is known here, or it is broken. Nothing was changed. Copy it again, or save it as WAV or MP4, and choose that.';
        case 'no-sound':
          return 'There is no sound in this file. Nothing was changed. Choose the film as the camera made it, or the sound of another device.';
        case 'cant-decode':
          return `This browser can’t decode the sound of this file${fault.coding === null ? '' : ` (${fault.coding})`}. Nothing was changed. Open it in another browser, or save its sound as WAV and choose that.`;
        case 'bad-rate':
          return `The sound is written at ${t.number(fault.rateHz)} samples a second, which can’t be listened to: 8,000 to 192,000 can. Nothing was changed. Save it as WAV at 48,000 samples a second and choose that.`;
      }
    },
    note: (note: EarNote): string => NOTES[note],
    live: {
      title: 'The microphone, now',
      hint: 'For the phone in the pocket or on the field: it listens while you work. Only the times of whistles and clicks are noted.',
      keep: 'Keep the sound as well, on this device (about half a megabyte a minute)',
      start: 'Listen with the microphone',
      asking: 'The browser asks for the microphone.',
      light: 'Listening',
      stop: 'Stop listening',
      state: (state: MicrophoneState): string => STATES[state],
      silent: 'Not a sound so far. Is the microphone covered, or off in the device’s settings?',
      heard: (blasts: number, clicks: number): string =>
        `${t.count(blasts, 'blast', 'blasts')}, ${t.count(clicks, 'click', 'clicks')}`,
      kept: (bytes: number): string => `sound kept: ${size(bytes)}`,
      locking: 'Locking the phone stops the microphone. Use the pocket screen: it stays awake and dark.',
      pocket: 'The microphone goes on in the pocket.',
      fault: (fault: MicrophoneFault): string => LIVE_FAULTS[fault],
      other: 'The microphone listens to another session. Stop it there first.',
      nothing: 'The microphone gave nothing. Nothing was kept; a film or a sound can be chosen all the same.',
      toResult: 'See what was heard',
      waiting: (minutes: number): string =>
        `${t.count(Math.max(1, Math.round(minutes)), 'minute from the microphone waits', 'minutes from the microphone wait')} here to be joined.`,
      join: 'Join it to the reps',
      letGo: 'Let it go',
      name: 'Microphone',
    },
    result: {
      title: 'What was heard',
      heard: (blasts: number, clicks: number, lengthS: number): string =>
        `${t.count(blasts, 'blast', 'blasts')} and ${t.count(clicks, 'click', 'clicks')} in ${at(lengthS)}.`,
      nothing: 'No whistle and no click was heard in it. If there were some, record nearer to the handler.',
      noReps:
        'No rep of this session calls for a whistle or a click, so there is nothing to join. What was heard can be kept all the same.',
      noneFits:
        'Reps of this session call for a whistle or a click, but nothing that was heard fits one well enough to ask. Is this the sound of that session? What was heard can be kept all the same.',
      line: 'Whistles and clicks over the reps, by time',
      lineTable: 'The same as a table',
      lanes: 'Above what was heard, below the reps.',
      columns: { when: 'When', what: 'What', pitch: 'Pitch', rep: 'Belongs to' },
      pitch: (hz: number): string => (hz === 0 ? '' : `${t.number(Math.round(hz / 10) * 10)} Hz`),
      nobody: 'nothing so far',
      play: (s: number): string => `Hear ${at(s)}`,
      sure: 'These fit for sure',
      sureNone: 'Nothing fits for sure: each is asked.',
      sureHint: 'Untick what is not so.',
      joined: (s: number, kind: CallKind, count: number, of: string): string =>
        `${at(s)}, ${call(kind, count)}: ${of}`,
      asked: 'Is this so?',
      askedLeft: (n: number): string => (n === 1 ? 'The last question.' : `${t.number(n)} questions.`),
      ask: (s: number, kind: CallKind, count: number, of: string): string =>
        `${kind === 'pips' ? 'These' : 'This'} ${call(kind, count)} at ${at(s)}: ${of}?`,
      sureness: (chance: number): string => `The chance that it is: ${t.number(100 * chance)} in 100.`,
      yes: 'Yes',
      other: 'Another rep',
      otherTitle: 'Which one?',
      none: 'None of them',
      no: 'No',
      skip: 'Leave the rest unjoined',
      answered: 'All asked.',
      undo: 'Back to the last question',
      keep: (joins: number): string =>
        joins === 0 ? 'Keep what was heard' : joins === 1 ? 'Keep this one' : `Keep these ${t.number(joins)}`,
      keepAfter: (questions: number): string =>
        questions === 1
          ? 'Answer the last question first.'
          : `Answer the ${t.number(questions)} questions first, or leave the rest unjoined.`,
      keepHint: 'Blasts that you keep teach the pitch of your own whistle; next time it is listened for.',
      letGo: 'Let it go',
      gone: 'Let go. Nothing was kept.',
      kept: (joins: number, more: number): string =>
        `Kept: ${joined(joins)}${more === 0 ? '' : `, and ${t.count(more, 'rep', 'reps')} timed by the film’s marks`}.`,
      notKept: 'The device did not keep the sound itself: there is no room. What was heard is kept.',
      own: (hz: number): string =>
        `Your own whistle is known: about ${t.number(Math.round(hz / 10) * 10)} Hz.`,
      ownUnknown: 'Your own whistle is not known yet: it is learned from the blasts that you keep.',
    },
    before: {
      title: 'Kept of this session',
      one: (name: string, lengthS: number, joins: number): string =>
        `${name}, ${at(lengthS)}: ${joined(joins)}`,
      drop: 'Take it out',
      dropped: 'Taken out: it counts for nothing now.',
      takeBack: 'Take that back',
    },
  };
}

export type ListenScreenWords = ReturnType<typeof listenScreenWords>;
