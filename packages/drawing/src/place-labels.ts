import { type BoxIndex, boxIndex } from './box-index.ts';
import type { Box, CardBox, LabelTone, PlacedLabel, Spot } from './drawing.ts';
import { inflate, overlap } from './spots.ts';
import { cutToWidth, textWidth } from './text-width.ts';

/** A label that wants a place: what it names, how far its mark reaches, which side it likes best. */
export interface WantedLabel {
  readonly text: string;
  readonly tone: LabelTone;
  readonly at: Spot;
  readonly reachX: number;
  readonly reachY: number;
  /** Where the tie begins, if the mark reaches less far than its label stands off; `reachX` when left out. */
  readonly tieFromX?: number;
  readonly sides: readonly Side[];
  /** Tied to its mark by a thin line where it stands away from it. */
  readonly tied: boolean;
}

export type Side = 'right' | 'left' | 'above' | 'below';

const SIZES: Readonly<Record<LabelTone, number>> = { strong: 14, clay: 14, water: 13, note: 13 };
const FROM_EDGE = 7;
/** How far from its mark a label may stand, nearest first, and how far it may be pushed along it. */
const AWAY = [5, 20, 38, 60] as const;
const PUSHED = [0, -9, 9, -18, 18, -28, 28, -40, 40, -56, 56] as const;
/** The longest a label may be, as a share of the card. */
const LONGEST = 0.52;
const LINE_HEIGHT = 1.2;
const ASCENT = 0.88;

interface Try {
  readonly box: Box;
  readonly anchor: 'start' | 'end';
  readonly cost: number;
}

/**
 * Finds a place for each label, most important first: wholly on the card, never over another label, as little as can
 * be over what is drawn. A label that finds none is left out; what it says stands in the picture's text.
 */
export function placeLabels(
  wanted: readonly WantedLabel[],
  card: CardBox,
  taken: readonly Box[],
  drawn: readonly Box[],
): PlacedLabel[] {
  const placed: PlacedLabel[] = [];
  const under = boxIndex(drawn);
  const hard: Box[] = [...taken];
  for (const label of wanted) {
    const size = SIZES[label.tone];
    const text = cutToWidth(label.text, size, card.width * LONGEST);
    const found = best(label, textWidth(text, size), size, card, hard, under);
    if (!found) continue;
    hard.push(inflate(found.box, 1.5));
    placed.push(settle(label, text, size, found));
  }
  return placed;
}

function best(
  label: WantedLabel,
  width: number,
  size: number,
  card: CardBox,
  hard: readonly Box[],
  under: BoxIndex,
): Try | null {
  let chosen: Try | null = null;
  const height = size * LINE_HEIGHT;
  label.sides.forEach((side, preference) => {
    for (const away of AWAY) {
      for (const push of PUSHED) {
        const bare = preference * 9 + away * 0.5 + Math.abs(push) * 0.8;
        // What is drawn there can only add to it: no need to look.
        if (chosen !== null && bare >= (chosen as Try).cost) continue;
        const tried = boxAt(label, side, away, push, width, height);
        if (!inside(tried.box, card) || hard.some((box) => overlap(box, tried.box) > 0)) continue;
        const cost = bare + under(tried.box) * 0.8;
        if (!chosen || cost < (chosen as Try).cost) chosen = { ...tried, cost };
      }
    }
  });
  return chosen;
}

function boxAt(
  { at, reachX, reachY }: WantedLabel,
  side: Side,
  away: number,
  push: number,
  width: number,
  height: number,
): Omit<Try, 'cost'> {
  if (side === 'right' || side === 'left') {
    const x = side === 'right' ? at.x + reachX + away : at.x - reachX - away - width;
    const box = { x, y: at.y - height / 2 + push, width, height };
    return { box, anchor: side === 'right' ? 'start' : 'end' };
  }
  const y = side === 'above' ? at.y - reachY - away * 0.6 - height : at.y + reachY + away * 0.6;
  return { box: { x: at.x - width / 2 + push, y, width, height }, anchor: 'start' };
}

function inside(box: Box, card: CardBox): boolean {
  return (
    box.x >= FROM_EDGE &&
    box.y >= FROM_EDGE &&
    box.x + box.width <= card.width - FROM_EDGE &&
    box.y + box.height <= card.height - FROM_EDGE
  );
}

function settle(label: WantedLabel, text: string, size: number, { box, anchor }: Try): PlacedLabel {
  const baseline = {
    x: anchor === 'start' ? box.x : box.x + box.width,
    y: box.y + (box.height - size) / 2 + size * ASCENT,
  };
  return { text, tone: label.tone, box, anchor, baseline, size, leader: leaderOf(label, box) };
}

/** A thin line from the mark's edge to the label, where they stand more than a little apart. */
function leaderOf(label: WantedLabel, box: Box): PlacedLabel['leader'] {
  if (!label.tied) return null;
  const middle = box.y + box.height / 2;
  const right = box.x > label.at.x;
  const beside = right || box.x + box.width < label.at.x;
  if (!beside) return null;
  const reach = label.tieFromX ?? label.reachX;
  const from = { x: label.at.x + (right ? reach : -reach), y: label.at.y };
  const to = { x: right ? box.x - 4 : box.x + box.width + 4, y: middle };
  return Math.abs(to.x - from.x) < 6 ? null : { from: { x: from.x + (right ? 3 : -3), y: from.y }, to };
}

/** A label with no mark of its own, which begins at a corner of the card. */
export function cornerLabel(text: string, tone: LabelTone, corner: Spot): WantedLabel {
  return { text, tone, at: corner, reachX: 0, reachY: 0, sides: ['right'], tied: false };
}
