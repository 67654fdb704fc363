import type { Dice } from '../careers/dice.ts';
import { blowFlue, drawFlue, type FlueKind, type FlueVoice } from './flue-whistle.ts';
import { blowJet, drawJet, type JetKind, type JetVoice } from './jet-whistle.ts';
import {
  blowBlast,
  drawWhistle,
  drawWideWhistle,
  type WhistleKind,
  type WhistleVoice,
} from './whistle-voice.ts';

/** Whistles of three mechanisms: a tone under a drawn envelope, one that sounds by itself, and a jet whose air is reckoned. */
export type VoiceKind = WhistleKind | JetKind | FlueKind;
export type Voice = WhistleVoice | JetVoice | FlueVoice;

const JETS: readonly VoiceKind[] = ['jet', 'cork', 'fingers', 'overblown'];
const FLUES: readonly VoiceKind[] = ['flue', 'ballFlue', 'twinFlue', 'handFlue'];
const isFlue = (kind: VoiceKind): kind is FlueKind => FLUES.includes(kind);
const isJet = (kind: VoiceKind): kind is JetKind => JETS.includes(kind);

/** One whistle drawn for its owner; `wide` changes what a drawn envelope can be, and leaves the others as they are. */
export const drawVoice = (kind: VoiceKind, pitchHz: number, breadth: 'usual' | 'wide', dice: Dice): Voice =>
  isFlue(kind)
    ? drawFlue(kind, pitchHz, dice)
    : isJet(kind)
      ? drawJet(kind, pitchHz, dice)
      : breadth === 'wide'
        ? drawWideWhistle(kind, pitchHz, dice)
        : drawWhistle(kind, pitchHz, dice);

/** One blast with where its first half height lies and how long it stays above half. */
export const blow = (voice: Voice, durationS: number, sampleRateHz: number, dice: Dice) =>
  'chambers' in voice
    ? blowFlue(voice, durationS, sampleRateHz, dice)
    : 'riseS' in voice
      ? blowJet(voice, durationS, sampleRateHz, dice)
      : blowBlast(voice, durationS, sampleRateHz, dice);
