/**
 * How long does joining take where there is most of it? Sixty calls wanted in two hours, six hundred blasts of five whistles, drawn at random; the
 * beginning of the sound known to two seconds, to ten minutes, and not at all; the own whistle known, and not. Times are of the processor,
 * beside the filter's for 10,000 legs in the same run. Run: `npx tsx bench/joining.ts [calls] [blasts]`.
 */
import { joinCalls, type OwnWhistle, soundCalls, type WantedCall } from '@sedgeline/engine/sound';
import { diceNamed } from '../studies/careers/dice.ts';
import { filterMs, processorMs } from './measure/filter-ms.ts';

const [WANTED = 60, BLASTS = 600] = process.argv.slice(2).map(Number);
const LENGTH_S = 7200;
const BEGAN_S = 5000;
const WHISTLES_HZ = [2700, 3000, 3300, 3600, 4000] as const;

const dice = diceNamed('most to be joined');
const wants = Array.from({ length: WANTED }, (): WantedCall => {
  const tappedAtS = BEGAN_S + dice.between(0, LENGTH_S);
  const kind = dice.chance(0.7) ? 'long' : 'pips';
  const cueTappedAtS = kind === 'long' && dice.chance(0.5) ? tappedAtS - dice.between(3, 20) : null;
  return { kind, tappedAtS, lagS: 2.5, lagSpreadS: 1.5, cueTappedAtS };
}).sort((a, b) => a.tappedAtS - b.tappedAtS);
const calls = soundCalls(
  Array.from({ length: BLASTS }, () => {
    const startS = dice.between(0, LENGTH_S - 1);
    const pitchHz = dice.pick(WHISTLES_HZ) * (1 + 0.01 * dice.normal());
    const isLong = dice.chance(0.7);
    return { startS, endS: startS + (isLong ? 0.6 : 0.15), kind: isLong ? 'long' : 'pip', pitchHz } as const;
  }),
);
const filter = filterMs();
process.stdout.write(
  `filter, 10,000 legs: ${filter.toFixed(0)} ms\n${WANTED} calls wanted, ${calls.length} heard\n`,
);
for (const withinS of [2, 600, null]) {
  for (const own of [{ pitchHz: 3000, spread: 0.015 }, null] satisfies (OwnWhistle | null)[]) {
    const starts = withinS === null ? null : { atS: BEGAN_S, withinS };
    const ms = processorMs(() => void joinCalls({ wants, calls, lengthS: LENGTH_S, starts, own }));
    const known = withinS === null ? 'not known' : `known to ${withinS} s`;
    process.stdout.write(
      `beginning ${known}, own whistle ${own === null ? 'not known' : 'known'}: ${ms.toFixed(0)} ms, ${(ms / filter).toFixed(1)} times the filter\n`,
    );
  }
}
