import { type Fact, type FactLine, readFactLine } from '@sedgeline/journal';

/** Facts to a block: small enough to look one fact up in, large enough that 100,000 facts are 200 records (our judgement). */
export const BLOCK_FACTS = 500;

/** Lines parted into whole blocks, and the rest that does not fill one. */
export function splitIntoBlocks(lines: readonly FactLine[]): {
  readonly blocks: readonly (readonly FactLine[])[];
  readonly rest: readonly FactLine[];
} {
  const whole = Math.floor(lines.length / BLOCK_FACTS);
  return {
    blocks: Array.from({ length: whole }, (_, i) => lines.slice(i * BLOCK_FACTS, (i + 1) * BLOCK_FACTS)),
    rest: lines.slice(whole * BLOCK_FACTS),
  };
}

/** The text of a block. No line holds a line end: JSON escapes them. */
export function blockText(lines: readonly FactLine[]): string {
  return lines.map((one) => one.line).join('\n');
}

/** What a stored text of lines gives. */
export interface BlockReading {
  readonly facts: readonly Fact[];
  /** How many lines could not be read. */
  readonly unreadable: number;
}

/**
 * Reads a block's facts. Lines were checked before they were written, so a whole block is parsed at one go and only looked
 * at for its ids; a block that does not parse is read line by line, with the full check, to save what can be saved.
 */
export function readBlock(text: unknown): BlockReading {
  if (typeof text !== 'string') return { facts: [], unreadable: 1 };
  try {
    const facts = JSON.parse(`[${text.replaceAll('\n', ',')}]`) as readonly Partial<Fact>[];
    if (facts.every((fact) => typeof fact?.id === 'string' && typeof fact.at === 'string')) {
      return { facts: facts as readonly Fact[], unreadable: 0 };
    }
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
  }
  const facts: Fact[] = [];
  let unreadable = 0;
  for (const line of text.split('\n')) {
    const reading = readFactLine(line);
    if (reading.ok) facts.push(reading.fact);
    else unreadable += 1;
  }
  return { facts, unreadable };
}
