import type { Dice } from '../careers/dice.ts';
import { type FieldBirdKind, songOf } from './field-songs.ts';
import { normalFormSong, type SongGesture, type Throat } from './normal-form-syrinx.ts';

/** The lowest and the highest that a song's tension goes, Hz. */
function spanOf(gestures: readonly SongGesture[]): { lowHz: number; highHz: number } {
  const all = gestures.flatMap(({ pitchHz }) => [0, 0.25, 0.5, 0.75, 1].map(pitchHz));
  return { lowHz: Math.min(...all), highHz: Math.max(...all) };
}

/** A throat that can sing it, its mouth tuned to the song. A bird of prey blows harder into a wider one, so that a mew is rich in partials. */
function drawThroat(kind: FieldBirdKind, gestures: readonly SongGesture[], dice: Dice): Throat {
  const { lowHz, highHz } = spanOf(gestures);
  const isMew = kind === 'mewing';
  const tightness = isMew ? dice.between(0.25, 0.5) : dice.between(0.4, 1.8);
  return {
    quickness: (2 * Math.PI * lowHz) / Math.sqrt(tightness),
    push: isMew ? dice.between(0.25, 0.38) : dice.between(0.05, 0.3),
    tracheaM: dice.between(0.012, 0.06),
    returned: dice.between(0.15, 0.5),
    beakHz: dice.between(lowHz, isMew ? 2 * highHz : highHz),
    beakQ: isMew ? 0.5 : dice.between(0.8, 2.5),
    straight: dice.between(0.02, 0.2),
    hoarse: 10 ** dice.between(-2.5, -0.8),
  };
}

/** A song as it is heard a metre off, about unit amplitude. */
export function fieldBird(kind: FieldBirdKind, sampleRateHz: number, dice: Dice): Float64Array {
  const gestures = songOf(kind, dice);
  const lastsS = Math.max(...gestures.map((one) => one.atS + one.lastsS)) + 0.05;
  const throat = drawThroat(kind, gestures, dice);
  return normalFormSong(gestures, throat, Math.round(lastsS * sampleRateHz), sampleRateHz, dice);
}
