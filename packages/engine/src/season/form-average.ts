import { ruleForLogistic } from '../numeric/logistic-normal.ts';

/**
 * Chances of asks on a day of unknown form u ~ N(0, sd^2), which all asks of the day share: each one's `E s(a_l + u)`, and that
 * all go well, `E prod_l s(a_l + u)`. Logits in, probabilities out; Gauss-Hermite as in `statedChances`. One exponential an ask:
 * `exp(-(a + u)) = exp(-a) exp(-u)`.
 */
export class FormAverage {
  readonly #weights: Float64Array;
  /** `exp(-u)` at each node. */
  readonly #factors: Float64Array;
  readonly sd: number;
  /** Each ask's chance, after `allOf`. */
  readonly each: Float64Array;

  constructor(formSd: number, asks: number) {
    const { nodes, weights } = ruleForLogistic(formSd * formSd);
    this.#weights = weights;
    this.#factors = nodes.map((node) => Math.exp(-formSd * node));
    this.sd = formSd;
    this.each = new Float64Array(asks);
  }

  /** The chance that all go well on such a day; fills `each`. */
  allOf(logOdds: Float64Array): number {
    const weights = this.#weights;
    const factors = this.#factors;
    const { each } = this;
    for (let n = 0; n < each.length; n++) each[n] = Math.exp(-logOdds[n]!);
    let all = 0;
    for (let k = 0; k < weights.length; k++) {
      let product = weights[k]!;
      for (let n = 0; n < each.length; n++) product /= 1 + each[n]! * factors[k]!;
      all += product;
    }
    for (let n = 0; n < each.length; n++) {
      const odds = each[n]!;
      let chance = 0;
      for (let k = 0; k < weights.length; k++) chance += weights[k]! / (1 + odds * factors[k]!);
      each[n] = Math.min(1, chance);
    }
    return Math.min(1, all);
  }

  /** The chance that all go well on a day whose form is known. */
  allOn(logOdds: Float64Array, form: number): number {
    let product = 1;
    for (let n = 0; n < logOdds.length; n++) product /= 1 + Math.exp(-(logOdds[n]! + form));
    return product;
  }
}
