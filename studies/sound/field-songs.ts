import type { Dice } from '../careers/dice.ts';
import { again, arched, held, type Pull, slid, sung } from './gestures.ts';
import type { SongGesture } from './normal-form-syrinx.ts';

type Song = (dice: Dice) => SongGesture[];

/** Notes one after another, each with how long it lasts and how long it is still thereafter. */
function inTurn(dice: Dice, notes: readonly { pull: Pull; lastsS: number; restS: number }[]): SongGesture[] {
  let atS = 0;
  return notes.map(({ pull, lastsS, restS }) => {
    const one = sung(dice, atS, lastsS, pull);
    atS += lastsS + restS;
    return one;
  });
}

/** A thrush: a phrase of two to five notes, level and sliding, low and full, said once to three times, and then another. */
const thrushlike: Song = (dice) => {
  const all: SongGesture[] = [];
  for (let phrase = 1 + dice.below(3), fromS = 0; phrase > 0; phrase--) {
    const notes = Array.from({ length: 2 + dice.below(4) }, () => {
      const hz = dice.between(1700, 3600);
      const pull = dice.chance(0.07)
        ? held(hz, dice.between(-0.03, 0.03))
        : dice.chance(0.5)
          ? slid(hz, hz * dice.between(0.65, 1.5))
          : arched(hz, hz * dice.between(1.1, 1.6), hz * dice.between(0.8, 1.2), dice.between(0.2, 0.7));
      return { pull, lastsS: dice.between(0.07, 0.4), restS: dice.between(0.02, 0.12) };
    });
    const said = again(inTurn(dice, notes), 1 + dice.below(3), dice.between(0.1, 0.4));
    all.push(...said.map((one) => ({ ...one, atS: one.atS + fromS })));
    fromS = Math.max(...all.map(({ atS, lastsS }) => atS + lastsS)) + dice.between(0.4, 1.2);
  }
  return all;
};

/** A tit: two notes turn about, one higher and shorter, four to ten times; sometimes three. */
const titlike: Song = (dice) => {
  const high = dice.between(3800, 6500);
  const low = high * dice.between(0.62, 0.88);
  const [a, b] = [dice.between(-0.32, 0), dice.between(-0.32, 0)];
  const [highS, lowS] = [dice.between(0.06, 0.15), dice.between(0.08, 0.2)];
  const phrase = [
    { pull: held(high, a), lastsS: highS, restS: dice.between(0.02, 0.09) },
    { pull: held(low, b), lastsS: lowS, restS: dice.between(0.02, 0.09) },
    ...(dice.chance(0.25) ? [{ pull: held(low, b), lastsS: 0.8 * lowS, restS: 0.04 }] : []),
  ];
  return again(inTurn(dice, phrase), 4 + dice.below(7), dice.between(0.02, 0.1));
};

/** A finch: a trill that quickens as it falls by two or three steps, and a flourish at its end. */
const finchlike: Song = (dice) => {
  let hz = dice.between(4500, 6800);
  let lastsS = dice.between(0.06, 0.14);
  const notes: { pull: Pull; lastsS: number; restS: number }[] = [];
  for (let step = 2 + dice.below(2); step > 0; step--) {
    const fall = dice.between(0.5, 0.85);
    const count = 4 + dice.below(6);
    for (let k = 0; k < count; k++)
      notes.push({ pull: slid(hz, hz * fall, dice.between(0.7, 1.4)), lastsS, restS: 0.35 * lastsS });
    hz *= dice.between(0.72, 0.92);
    lastsS *= dice.between(0.7, 1);
  }
  notes.push({ pull: arched(hz, 1.4 * hz, 0.7 * hz, 0.4), lastsS: 0.12, restS: 0.02 });
  notes.push({ pull: slid(0.7 * hz, 1.2 * hz), lastsS: dice.between(0.1, 0.25), restS: 0 });
  return inTurn(dice, notes);
};

/** A wader: sharp pipes in a row that run together, or a bubbling that climbs, or one long curl upwards. */
const waderlike: Song = (dice) => {
  const hz = dice.between(2000, 3900);
  const way = dice.uniform();
  if (way < 0.3) {
    const curl = {
      pull: slid(0.55 * hz, hz, dice.between(1, 2.5)),
      lastsS: dice.between(0.4, 1),
      restS: 0.2,
    };
    return inTurn(
      dice,
      Array.from({ length: 1 + dice.below(4) }, () => curl),
    );
  }
  const isRun = way < 0.6;
  const bend = dice.between(-0.16, 0.16);
  const [lastsS, restS] = isRun
    ? [dice.between(0.05, 0.1), dice.between(0.04, 0.12)]
    : [dice.between(0.12, 0.35), dice.between(0.1, 0.6)];
  const climbs = isRun ? dice.between(0.985, 1.03) : 1;
  const top = dice.between(0.3, 0.7);
  return inTurn(
    dice,
    Array.from({ length: isRun ? 6 + dice.below(18) : 2 + dice.below(6) }, (_, k) => {
      const now = hz * climbs ** k;
      const low = now * (1 - Math.abs(bend) - 0.02);
      return { pull: bend < 0 ? held(now, bend) : arched(low, now, low, top), lastsS, restS };
    }),
  );
};

/** A bird of prey: a mew that rises a little and falls long, once to four times. */
const mewing: Song = (dice) => {
  const hz = dice.between(1900, 3300);
  const pull = arched(
    hz * dice.between(0.75, 0.95),
    hz,
    hz * dice.between(0.6, 0.85),
    dice.between(0.08, 0.3),
  );
  const mew = inTurn(dice, [{ pull, lastsS: dice.between(0.4, 1.2), restS: 0 }]);
  return again(mew, 1 + dice.below(4), dice.between(0.6, 2));
};

/** A nuthatch or a starling: whistles as a boy whistles, level or sliding up or down, in slow or quick rows. */
const whistlingBird: Song = (dice) => {
  const hz = dice.between(1900, 3800);
  const to = dice.chance(0.08)
    ? dice.between(0.98, 1.02)
    : dice.chance(0.5)
      ? dice.between(1.1, 1.5)
      : dice.between(0.5, 0.9);
  const lastsS = dice.chance(0.5) ? dice.between(0.08, 0.16) : dice.between(0.2, 0.7);
  const whistle = inTurn(dice, [{ pull: slid(hz, hz * to, dice.between(0.7, 1.6)), lastsS, restS: 0 }]);
  return again(whistle, 2 + dice.below(lastsS < 0.18 ? 12 : 4), dice.between(0.08, 0.6));
};

/** What nobody thought of: pull and breath both wander smoothly, in some notes that are alike or not. */
const unthought: Song = (dice) => {
  const curve = () => {
    const waves = Array.from(
      { length: 5 },
      (_, k) => [dice.normal() / (k + 1), dice.between(0, 2 * Math.PI)] as const,
    );
    return (u: number) => waves.reduce((sum, [a, turn], k) => sum + a * Math.sin(Math.PI * k * u + turn), 0);
  };
  const hz = 1700 * (6000 / 1700) ** dice.uniform();
  const [bent, puffed] = [dice.between(0.03, 0.35), dice.between(0.1, 0.6)];
  const lastsS = 0.06 * (1.3 / 0.06) ** dice.uniform();
  const restS = 0.04 * (1 / 0.04) ** dice.uniform();
  const note = (atS: number): SongGesture => {
    const [pull, puff] = [curve(), curve()];
    const one = sung(dice, atS, lastsS * dice.between(0.8, 1.2), (u) => hz * Math.exp(bent * 0.5 * pull(u)));
    return { ...one, breath: (u) => Math.min(one.breath(u), 0.6 + puffed * puff(u)) };
  };
  if (dice.chance(0.5)) return again([note(0)], 1 + dice.below(8), restS);
  return Array.from({ length: 1 + dice.below(8) }, (_, k) => note(k * (1.25 * lastsS + restS)));
};

const SONGS = { thrushlike, titlike, finchlike, waderlike, mewing, whistlingBird, unthought };
/** Birds whose throats are reckoned. */
export type FieldBirdKind = keyof typeof SONGS;
export const isFieldBird = (kind: string): kind is FieldBirdKind => kind in SONGS;
export const FIELD_BIRDS = Object.keys(SONGS) as FieldBirdKind[];

/** A song's gestures: our own descriptions of ways of singing, no bird's recording. */
export const songOf = (kind: FieldBirdKind, dice: Dice): SongGesture[] => SONGS[kind](dice);
