import type { Dice } from '../careers/dice.ts';
import { blowJet, drawJet, type JetKind, type JetVoice } from './jet-whistle.ts';
import {
  blowBlast,
  drawWhistle,
  drawWideWhistle,
  type WhistleKind,
  type WhistleVoice,
} from './whistle-voice.ts';

/** Whistles of both mechanisms: a tone under a drawn envelope, and one that sounds by itself. */
export type VoiceKind = WhistleKind | JetKind;
export type Voice = WhistleVoice | JetVoice;

const JETS: readonly VoiceKind[] = ['jet', 'cork', 'fingers', 'overblown'];
const isJet = (kind: VoiceKind): kind is JetKind => JETS.includes(kind);

/** One whistle drawn for its owner; `wide` changes what a drawn envelope can be, and leaves the others as they are. */
export const drawVoice = (kind: VoiceKind, pitchHz: number, breadth: 'usual' | 'wide', dice: Dice): Voice =>
  isJet(kind)
    ? drawJet(kind, pitchHz, dice)
    : breadth === 'wide'
      ? drawWideWhistle(kind, pitchHz, dice)
      : drawWhistle(kind, pitchHz, dice);

/** One blast with where its first half height lies and how long it stays above half. */
export const blow = (voice: Voice, durationS: number, sampleRateHz: number, dice: Dice) =>
  'riseS' in voice
    ? blowJet(voice, durationS, sampleRateHz, dice)
    : blowBlast(voice, durationS, sampleRateHz, dice);
