/**
 * How far an order may give itself away (common practice, no source): over eight sends and more no simple rule guesses it with a
 * balanced accuracy of `guess` (0.5 is chance), and the chance of a clean send differs by no more than `hazard` after none to
 * three stops. Fewer sends are not judged.
 */
export const ORDER_LIMITS = { guess: 0.6, hazard: 0.1, fromSends: 8, stops: 3 } as const;
