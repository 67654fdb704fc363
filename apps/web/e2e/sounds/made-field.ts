import { addClick, addTone } from '../../../../packages/engine/src/sound/made-sound.fixture.ts';
import { diceNamed } from '../../../../studies/careers/dice.ts';

/** The stops of the made session: when each was blown, seconds on the sound. */
export const STOPS_S = [6, 26, 35, 61, 84, 97, 129, 142] as const;
/** Each was tapped so long after, seconds; of one the handler thought late. */
export const TAPPED_AFTER_S = [3, 3.4, 2.8, 3.1, 11, 3.2, 2.9, 3] as const;
/** A blast that belongs to no rep, near the stop tapped late, and of another whistle. */
export const OTHERS_S = 90.5;
export const CLICK_S = 50;
export const LENGTH_S = 160;
/** When the sound begins, by every clock of the test. */
export const STARTS_AT = '2026-05-04T09:00:00.000Z';

/** The made sound of a session: quiet noise, eight long blasts of one whistle, one of another, a click. */
export function fieldSound(sampleRateHz: number): Float32Array {
  const dice = diceNamed('a field in May');
  const sound = Float32Array.from({ length: LENGTH_S * sampleRateHz }, () => 0.002 * dice.normal());
  for (const startS of STOPS_S)
    addTone(sound, sampleRateHz, { startS, endS: startS + 0.7, pitchHz: 3150, level: 0.25 });
  addTone(sound, sampleRateHz, { startS: OTHERS_S, endS: OTHERS_S + 0.6, pitchHz: 3900, level: 0.2 });
  addClick(sound, sampleRateHz, CLICK_S, 0.4);
  return sound;
}

/** Bytes before the sound of a WAV file, 16 bit, one channel, that promises so many bytes of sound. */
export function wavHeader(sampleRateHz: number, soundBytes: number): Buffer {
  const header = Buffer.alloc(44);
  header.write('RIFF', 0);
  header.writeUInt32LE(36 + soundBytes, 4);
  header.write('WAVEfmt ', 8);
  header.writeUInt32LE(16, 16);
  header.writeUInt16LE(1, 20);
  header.writeUInt16LE(1, 22);
  header.writeUInt32LE(sampleRateHz, 24);
  header.writeUInt32LE(2 * sampleRateHz, 28);
  header.writeUInt16LE(2, 32);
  header.writeUInt16LE(16, 34);
  header.write('data', 36);
  header.writeUInt32LE(soundBytes, 40);
  return header;
}

/** The same as a WAV file. */
export function fieldWav(sampleRateHz: number): Buffer {
  const samples = Int16Array.from(fieldSound(sampleRateHz), (x) => Math.round(32_767 * x));
  return Buffer.concat([wavHeader(sampleRateHz, samples.byteLength), Buffer.from(samples.buffer)]);
}

/** A fact of the session beside its reps; `s` is seconds on the sound. */
export interface MoreFact {
  readonly kind: string;
  readonly s: number;
  readonly body: Readonly<Record<string, unknown>>;
}

/** The session's facts as JSON Lines: eight stops, each tapped a little after its whistle, and what else is to be on record. */
export function fieldJournal(more: readonly MoreFact[] = []): string {
  const startsMs = Date.parse(STARTS_AT);
  const at = (s: number) => new Date(startsMs + 1000 * s).toISOString();
  const facts = [
    { kind: 'dog-added', at: at(-60), body: { dog: 'd', name: 'Whimbrel' } },
    { kind: 'session-opened', at: at(-30), body: { session: 's', dog: 'd' } },
    ...STOPS_S.map((s, n) => ({
      kind: 'rep-recorded',
      at: at(s + (TAPPED_AFTER_S[n] ?? 3)),
      body: {
        rep: `r${n + 1}`,
        session: 's',
        legs: [{ skill: 'stop', ask: { distanceM: 20 + n, wayFraction: 0.5 }, grade: 'good' }],
      },
    })),
    { kind: 'session-closed', at: at(LENGTH_S + 20), body: { session: 's' } },
    ...more.map(({ kind, s, body }) => ({ kind, at: at(s), body })),
  ];
  return facts.map((fact, n) => `${JSON.stringify({ id: `field-${n}`, ...fact })}\n`).join('');
}
