import { fleshlerHoffman, type WeightedOrder } from '@sedgeline/engine/session';

/** A way of ordering clean sends that is wrong on purpose, with every order that it gives. */
export interface WrongOrders {
  readonly name: string;
  readonly ways: readonly WeightedOrder[];
}

const betweenStops = (drawn: readonly boolean[], weight = 1): WeightedOrder => ({
  order: [false, ...drawn, false],
  weight,
});

/** Clean, stop, clean, stop: from either end. */
export function alternation(drawn: number): WrongOrders {
  const from = (first: number) =>
    betweenStops(Array.from({ length: drawn }, (_, n) => (n + first) % 2 === 0));
  return { name: 'clean and stopped in turn', ways: [from(0), from(1)] };
}

/** A fixed number, merely shuffled: drawing without replacement. */
export function fixedNumber(drawn: number, clean: number): WrongOrders {
  const ways: WeightedOrder[] = [];
  for (let bits = 0; bits < 2 ** drawn; bits++) {
    const order = Array.from({ length: drawn }, (_, n) => ((bits >> n) & 1) === 1);
    if (order.filter(Boolean).length === clean) ways.push(betweenStops(order));
  }
  return { name: `always ${clean} clean of ${drawn}, shuffled`, ways };
}

/** Every send drawn alike, but never more than so many stops running. */
export function longestRun(drawn: number, share: number, longest: number): WrongOrders {
  let open = [{ order: [] as boolean[], weight: 1, stops: 1 }];
  for (let n = 0; n < drawn; n++) {
    open = open.flatMap(({ order, weight, stops }) => {
      const clean = { order: [...order, true], weight: stops >= longest ? weight : weight * share, stops: 0 };
      const stop = { order: [...order, false], weight: weight * (1 - share), stops: stops + 1 };
      return stops >= longest ? [clean] : [clean, stop];
    });
  }
  const ways = open.map(({ order, weight }) => betweenStops(order, weight));
  return { name: `never more than ${longest} stops running`, ways };
}

/**
 * So many run lengths after Fleshler and Hoffman, rounded down and shuffled, each followed by a clean send; what is over is cut off, and
 * a session that falls short goes on with stops.
 */
export function shuffledRuns(drawn: number, share: number, runs: number): WrongOrders {
  const stops = fleshlerHoffman(runs, -1 / Math.log(1 - share)).map(Math.floor);
  const ways = everyOrderOf(stops).map((lengths) => {
    const sends = lengths.flatMap((length) => [...new Array<boolean>(length).fill(false), true]);
    return betweenStops(Array.from({ length: drawn }, (_, n) => sends[n] ?? false));
  });
  return { name: `${runs} run lengths after Fleshler and Hoffman (${stops.join(', ')}), shuffled`, ways };
}

function everyOrderOf(values: readonly number[]): number[][] {
  if (values.length <= 1) return [[...values]];
  return values.flatMap((value, n) =>
    everyOrderOf(values.filter((_, other) => other !== n)).map((rest) => [value, ...rest]),
  );
}
