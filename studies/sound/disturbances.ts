import type { Dice } from '../careers/dice.ts';
import { aboutTheHandler, isAbout } from './about-the-handler.ts';
import { passingCar, rustle } from './background.ts';
import { birdPhrase, crickets } from './birds.ts';
import { barks, whine } from './dog-voice.ts';
import { drawnSong, isDrawn } from './drawn-songs.ts';
import { farmSound, isFarm } from './farm-sounds.ts';
import { fieldBird } from './field-birds.ts';
import { isFieldBird } from './field-songs.ts';
import { clank, footsteps, shot, shutter, squeal, twig, zip } from './knocks.ts';
import { addAt, fromDb } from './noise.ts';
import type { Disturbed } from './recording.ts';
import type { DisturbanceKind, Scene } from './scene.ts';
import { speechPhrase } from './speech.ts';
import { isSyrinx, syrinxPhrase } from './syrinx.ts';
import { travelled } from './travel.ts';
import { isYard, yardSound } from './yard-sounds.ts';

function voiceOf(kind: DisturbanceKind, sampleRateHz: number, dice: Dice): Float64Array {
  switch (kind) {
    case 'speech':
      return speechPhrase(sampleRateHz, dice);
    case 'barks':
      return barks(sampleRateHz, dice);
    case 'whine':
      return whine(sampleRateHz, dice);
    case 'shot':
      return shot(sampleRateHz, dice);
    case 'clank':
      return clank(sampleRateHz, dice);
    case 'squeal':
      return squeal(sampleRateHz, dice);
    case 'shutter':
      return shutter(sampleRateHz, dice);
    case 'zip':
      return zip(sampleRateHz, dice);
    case 'twig':
      return twig(sampleRateHz, dice);
    case 'footsteps':
      return footsteps(dice.between(2, 8), sampleRateHz, dice);
    case 'crickets':
      return crickets(dice.between(4, 12), sampleRateHz, dice);
    case 'rustle':
      return rustle(sampleRateHz, dice);
    case 'car':
      return passingCar(sampleRateHz, dice);
    default:
      if (isDrawn(kind)) return drawnSong(kind, sampleRateHz, dice);
      if (isSyrinx(kind)) return syrinxPhrase(kind, sampleRateHz, dice);
      if (isFarm(kind)) return farmSound(kind, sampleRateHz, dice);
      if (isFieldBird(kind)) return fieldBird(kind, sampleRateHz, dice);
      if (isYard(kind)) return yardSound(kind, sampleRateHz, dice);
      if (isAbout(kind)) return aboutTheHandler(kind, sampleRateHz, dice);
      return birdPhrase(kind, sampleRateHz, dice);
  }
}

/** Sounds made at the phone or the handler: they come without the field's air and trees. */
const AT_HAND: readonly DisturbanceKind[] = [
  'zip',
  'footsteps',
  'rustle',
  'shutter',
  'beeps',
  'ring',
  'jacket',
  'rainOnHood',
];

/** Adds what else is heard in the field, at random times, each with its own distance, air and echoes; tells what came when. */
export function addDisturbances(into: Float64Array, scene: Scene, dice: Dice): Disturbed[] {
  const all: Disturbed[] = [];
  const { sampleRateHz, treesS, wallS, rings } = scene;
  for (const { kind, perMinute, loudDb } of scene.disturbances) {
    const expected = (perMinute * scene.lastsS) / 60;
    const count = Math.floor(expected) + (dice.chance(expected % 1) ? 1 : 0);
    for (let k = 0; k < count; k++) {
      const dry = voiceOf(kind, sampleRateHz, dice);
      const isNear = AT_HAND.includes(kind);
      const trees =
        treesS === null || isNear
          ? null
          : {
              firstS: dice.between(...treesS),
              overS: dice.between(0.1, 0.3),
              loudestDb: dice.between(-26, -12),
            };
      const path = {
        distanceM: isNear ? 0.5 : dice.between(4, 120),
        air: scene.air,
        trees,
        wallS: isNear ? null : wallS,
        rings: isNear ? null : rings,
      };
      const { direct, echoes } = travelled(dry, sampleRateHz, path, dice);
      addAt(echoes, direct, 0);
      const peak = echoes.reduce((most, x) => Math.max(most, Math.abs(x)), 1e-12);
      const gain = fromDb(dice.between(...loudDb)) / peak;
      const at = dice.below(into.length);
      addAt(into, echoes, at, gain);
      all.push({ kind, startS: at / sampleRateHz, endS: (at + echoes.length) / sampleRateHz });
    }
  }
  return all;
}
