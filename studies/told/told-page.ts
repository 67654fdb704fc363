import type { Start } from './first-legs.ts';
import { type StartFigures, type toldFigures, wronglyTold } from './told-figures.ts';

const signed = (nats: number) => (1000 * nats).toFixed(0).replace(/^-0$/, '0');
const inHundred = (share: number) => String(Math.round(100 * share));

function isSame(a: Start, b: Start): boolean {
  return a.errorSd === b.errorSd && a.stoodAt === b.stoodAt;
}

function startLine({ start, tellers, apart }: StartFigures, used: Start): string {
  const name = `${start.stoodAt}, ${start.errorSd}`;
  const cells = tellers.map(({ soon, all }) => `${signed(soon)} / ${signed(all)}`);
  return `| ${isSame(start, used) ? `**${name}**` : name} | ${cells.join(' | ')} | ${inHundred(apart.mean)}, ${inHundred(apart.most)} |`;
}

/** The page of the study: whether what is told helps, whom it hurts, and how soon the record outweighs it. */
export function toldPage(
  { figures, plain }: ReturnType<typeof toldFigures>,
  used: Start,
  dogs: number,
  seed: number,
): string {
  const inUse = figures.find(({ start }) => isSame(start, used))!;
  const names = inUse.tellers.map(({ teller }) => teller);
  const courses = [
    ['nothing', wronglyTold(null)],
    ['100 m, on new ground', wronglyTold({ farthestM: 100, place: 'new' })],
    ['400 m, on new ground', wronglyTold({ farthestM: 400, place: 'new' })],
    ['never yet', wronglyTold({ farthestM: 0, place: 'home' })],
  ] as const;
  return `# What a handler tells of a new dog

Of a dog that is new to the record its handler may say, for each skill, how far out it lately went well and on how strange a ground. That
gives the chances a start, before the first leg. It is believed a little and soon outweighed.

How it is read: not missing the stated distance on such ground, with nothing else to make it hard, had log-odds ${used.stoodAt}
(${inHundred(1 / (1 + Math.exp(-used.stoodAt)))} in 100: it is the farthest that went well, not the usual). The ability that this needs, \`z\`, by the costs of distance
and newness before any record, is taken as seen with an error of ${used.errorSd} logits: with mean \`m\` and variance \`V\` of the ability known so far,
the stated mean moves by \`V/(V + ${used.errorSd}^2) (z - m)\`. The variance stays as it was: what was told makes no chance surer. Legs teach the engine as if nothing had been told,
and each leaves a share of the start, \`1 - Vab/v (1 - v1/v)\` (variances of the ability, of the log-odds before the leg and after it), as they would of a shifted
prior: so a word taken back leaves no trace, and farther never means less able. "Never yet" is two logits under the easy end. A ground at home costs nothing, one the dog knows a quarter of a new one. The study chose the two numbers from a few; the rest is our judgement, 2026.

\`standing --json\` says so beside the contract's fields, where something is told: \`told\`, with \`farthestM\`, \`ground\`, \`at\` and \`left\`, the share of the start that legs have
not outweighed; a skill that was never worked stands there with 0 legs. In \`chance\` the part of the log-odds is named \`told\`. \`replay\` and every answer for an earlier moment know it from
its time on only.

## Does it help, and whom does it hurt?

${dogs} invented dogs that know nothing of logits (a reach in metres, a Weibull curve, a form of the day), the first 20 legs of each on a ground that is new to
the record. The handlers remember a dozen legs; *modest* and *optimistic* ones tell 0.6 and 1.8 times as far, *boasting* ones 4 times, *wild* ones
anything from 2 to 400 m. *Same of all* is told 15 m of every dog: it gains what a mere lift of all chances would. Figures: change of log loss against nothing
told (${plain.soon.toFixed(3)} nats a leg at first), in thousandths of a nat a leg, of the first 5 legs / of all 20; less than 0 is better. Bold: in use.
"Apart": how far, in 100, the chances of legs 11 to 20 lie apart between "never yet" and 400 m on new ground, the two ends of what can be told: the mean, and the
most of any leg. It is what "soon outweighed" means here: no chance more than 8 in 100 after ten legs, whatever was told.

| log-odds, error | ${names.join(' | ')} | apart |
|---|${names.map(() => '---|').join('')}---|
${figures.map((one) => startLine(one, used)).join('\n')}

Of the one in use, standard error of the first figure and how often the 90 % interval of the first ten legs held the true chance, in 100 (nothing told: ${inHundred(plain.held)}):

| | ${names.join(' | ')} |
|---|${names.map(() => '---|').join('')}
| standard error | ${inUse.tellers.map(({ standardError }) => (1000 * standardError).toFixed(1)).join(' | ')} |
| held | ${inUse.tellers.map(({ held }) => inHundred(held)).join(' | ')} |

An honest word is worth little, and it is worth it at the very beginning; a lesser error would gain more of it and give wild words more to spoil.

## A puppy that was boasted of

Five months old, asked to stop at 15 m and missing every time, six times a session. Chance of not missing, in 100:

| told | before | after 3 | after 6 | after 10 | after 12 |
|---|---|---|---|---|---|
${courses.map(([name, course]) => `| ${name} | ${[0, 3, 6, 10, 12].map((n) => inHundred(course[n]!)).join(' | ')} |`).join('\n')}

Made by \`npx tsx studies/told.ts ${dogs} ${seed}\`.
`;
}
