import { diceNamed } from '../careers/dice.ts';
import { blow, drawVoice, type VoiceKind } from '../sound/voices.ts';

/** When the stops of a quiet session are blown, seconds: as in a real one, far apart. */
export const STOPS_S = [6, 26, 35, 61, 84] as const;
const LASTS_S = 95;
const RATE_HZ = 16_000;

/** A session in a silent field, one whistle, one long blast at each stop, half a second to one: what an ear must not need company for. */
export function sparseSession(kind: VoiceKind) {
  const dice = diceNamed(`sparse session ${kind}`);
  const voice = drawVoice(kind, dice.between(2400, 5200), 'usual', dice);
  const samples = Float32Array.from({ length: LASTS_S * RATE_HZ }, () => 0.002 * dice.normal());
  for (const startS of STOPS_S) {
    const { sound, leadS } = blow(voice, dice.between(0.5, 1), RATE_HZ, dice);
    const from = Math.round((startS - leadS) * RATE_HZ);
    sound.forEach((x, i) => {
      samples[from + i] = samples[from + i]! + 0.2 * x;
    });
  }
  return { samples, sampleRateHz: RATE_HZ };
}
