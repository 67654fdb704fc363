/**
 * Lengths of `count` intervals whose chance of ending is as constant as so few can make it: each is the mean of one of `count`
 * equally likely slices of an exponential with this mean (FleshlerHoffman1962),
 * `t_n = mean (1 + ln N + (N - n) ln(N - n) - (N - n + 1) ln(N - n + 1))`, 0 ln 0 = 0, n = 1..N; they add up to N times the mean.
 * In the unit of the mean, shortest first; shuffle before use. Checked against the table printed for 12 intervals of mean 30.
 *
 * A run of stops between clean sends that are each drawn with chance p is such an exponential of mean `1 / -ln(1 - p)` rounded
 * down. A session holds three or four runs: so short a list gives its last runs away, which `docs/order.md` shows, so
 * `cleanSends` draws the sends themselves and this is the yardstick.
 * @throws RangeError for a count that is not a whole number from 1, or a mean that is not over 0
 */
export function fleshlerHoffman(count: number, mean: number): number[] {
  if (!Number.isInteger(count) || count < 1)
    throw new RangeError(`count: expected a whole number >= 1, got ${count}`);
  if (!(mean > 0 && mean < Infinity)) throw new RangeError(`mean: expected > 0, got ${mean}`);
  return Array.from({ length: count }, (_, n) => {
    const left = count - n - 1;
    return mean * (1 + Math.log(count) + timesLog(left) - timesLog(left + 1));
  });
}

const timesLog = (x: number) => (x === 0 ? 0 : x * Math.log(x));
