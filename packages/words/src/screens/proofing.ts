import type { ChanceWords } from '../chances.ts';
import type { TimeWords } from '../time.ts';
import type { Tongue } from '../tongue.ts';
import type { TradeWords } from '../trade.ts';
import type { Temptation } from '../vocabulary.ts';
import { type CountedLegs, countedLegs } from './progress.ts';

type Demand = 'distance' | 'wait' | 'distraction';

interface Band {
  readonly to: number | null;
  readonly at: number;
}

type Ground =
  | { readonly kind: 'ground'; readonly name: string }
  | { readonly kind: 'new-ground' }
  | { readonly kind: 'no-ground' };

interface Cell {
  readonly counts: CountedLegs;
  readonly tried: 'yes' | 'excused' | 'never';
  readonly lastWorkedMs: number | null;
  readonly now: { readonly chance: number; readonly interval90: readonly [number, number] };
  readonly beyond: boolean;
}

/** A figure and its unit on one line. */
const together = (text: string): string => text.replaceAll(' ', '\u00a0');
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Words of the map of what has been tried where. */
export function proofingWords(t: Tongue, trade: TradeWords, chances: ChanceWords, time: TimeWords) {
  const amount = (demand: Demand, value: number): string => {
    if (demand === 'wait') return `${t.number(value)} s`;
    return demand === 'distance' ? t.length(value) : trade.distraction(value);
  };
  /** One column: "to 15 m", "15 to 30 m", "beyond 30 m"; the figure keeps its unit beside it. */
  const band = (demand: Demand, bands: readonly Band[], column: number): string => {
    const { to, at } = bands[column]!;
    const from = bands[column - 1]?.to ?? null;
    if (demand === 'distraction')
      return to === null ? `${trade.distraction(at)}, or more` : trade.distraction(at);
    if (to === null) return `beyond ${together(amount(demand, from ?? at))}`;
    if (from === null) return `to ${together(amount(demand, to))}`;
    return `${demand === 'wait' ? t.number(from) : t.bareLength(from)} to ${together(amount(demand, to))}`;
  };
  const ground = (of: Ground): string => {
    if (of.kind === 'ground') return of.name;
    return of.kind === 'new-ground' ? 'First day on any ground' : 'No ground named';
  };
  const stated = (demand: Demand, at: number, { now }: Cell): string => {
    const where = demand === 'distraction' ? '' : ` at ${amount(demand, at)}`;
    return `${chances.withInterval(now.chance, now.interval90)}${where}`;
  };
  return {
    open: 'Where tried',
    openFor: (skill: string): string => `${skill}: where tried`,
    about: {
      temptations: 'What draws the dog',
      grounds: 'Ground',
    },
    caption: (what: 'temptations' | 'grounds', demand: Demand): string => {
      const across = { distance: 'how far', wait: 'how long the wait', distraction: 'what goes on about' }[
        demand
      ];
      return what === 'temptations' ? `What draws the dog, by ${across}` : `Where, by ${across}`;
    },
    band,
    temptation: (temptation: Temptation): string => capital(trade.temptation(temptation)),
    ground,
    never: 'never tried',
    /** Legs not held against the dog, in a cell. */
    notCounted: (n: number): string => `${t.number(n)} not counted`,
    /** How much of a map has been tried. */
    summary: (tried: number, cells: number): string =>
      tried === cells
        ? `All ${t.number(cells)} tried.`
        : `${t.number(tried)} of ${t.number(cells)} tried; ${t.number(cells - tried)} never.`,
    /** One cell in full. */
    sentence: (
      row: string,
      demand: Demand,
      bands: readonly Band[],
      column: number,
      cell: Cell,
      nowMs: number,
    ): string => {
      const place = `${row}, ${band(demand, bands, column)}`;
      const say = stated(demand, bands[column]!.at, cell);
      if (cell.tried === 'never') {
        return cell.beyond
          ? `${place}: never tried. We would say ${say}, but that is beyond what has gone well so far, and such figures come out a little too hopeful.`
          : `${place}: never tried, though something as hard has gone well. We would say ${say}.`;
      }
      const worked = cell.lastWorkedMs === null ? '' : `, last ${time.ago(cell.lastWorkedMs, nowMs)}`;
      return `${place}: ${countedLegs(t, cell.counts)}${worked}. Good now: ${say}.`;
    },
    press: 'Press a place to read it in full.',
    key: 'Big figure: the chance of good now, in 100, all else as in the usual ask. Dashed: never tried.',
    none: (name: string): string => `${name} has not been worked at this yet: everything is still to try.`,
  };
}

export type ProofingWords = ReturnType<typeof proofingWords>;
