import { dogDesign } from './dog-design.ts';
import { isNew, isTired, SIDE, WIDENED } from './dog-effects.ts';
import { effectLikelihood, fitDog } from './effect-likelihood.ts';
import { type EffectLikelihood, effectPosterior, probabilityBeyond } from './effect-posterior.ts';
import {
  type Evidence,
  type EvidenceKind,
  evidenceOf,
  type PatternFinding,
  type PatternLeg,
  stateOf,
} from './pattern.ts';
import { SIZES } from './sizes.ts';

const NOTHING_SEEN: EffectLikelihood = { from: -1, step: 1, logs: [0, 0, 0] };

interface Compared {
  readonly pattern: 'one-sided' | 'only-at-home' | 'tires-late';
  readonly column: string;
  readonly kinds: readonly [EvidenceKind, EvidenceKind];
  readonly isFirst: (leg: PatternLeg) => boolean;
  readonly isSecond: (leg: PatternLeg) => boolean;
}

const COMPARED: readonly Compared[] = [
  {
    pattern: 'one-sided',
    column: 'side',
    kinds: ['left', 'right'],
    isFirst: ({ skill }) => skill === 'cast-left',
    isSecond: ({ skill }) => skill === 'cast-right',
  },
  {
    pattern: 'only-at-home',
    column: 'newness',
    kinds: ['new-ground', 'known-ground'],
    isFirst: isNew,
    isSecond: (leg) => !isNew(leg),
  },
  {
    pattern: 'tires-late',
    column: 'tired',
    kinds: ['late', 'fresh'],
    isFirst: isTired,
    isSecond: (leg) => !isTired(leg),
  },
];

const isMissed = ({ grade }: PatternLeg) => grade === 'missed';

/** One-sided, only at home, tires late: one regression of the dog's legs, each effect with the others beside it. */
export function linearPatterns(legs: readonly PatternLeg[]): PatternFinding[] {
  const counted = legs.filter(({ weight }) => weight > 0);
  const design = dogDesign(legs, [SIDE], WIDENED);
  const inHand = counted.length > 0 ? fitDog(design) : null;
  return COMPARED.map(({ pattern, column, kinds, isFirst, isSecond }): PatternFinding => {
    const size = SIZES[pattern];
    const evidence = [
      evidenceOf(kinds[0], counted.filter(isFirst), isMissed),
      evidenceOf(kinds[1], counted.filter(isSecond), isMissed),
    ] as const;
    const scarce = evidence.find(({ legs: n }: Evidence) => n < size.need);
    const isThin = inHand === null || scarce !== undefined;
    const isEither = pattern === 'one-sided';
    const posterior = effectPosterior(
      isThin ? NOTHING_SEEN : effectLikelihood(design, inHand, column),
      size,
      isEither ? (effect) => Math.abs(effect) > size.matters : undefined,
    );
    const probability = probabilityBeyond(posterior, size.priorChance);
    return {
      pattern,
      state: isThin ? 'cant-say' : stateOf(probability),
      // Side: larger weight means the left is harder, told as theta_left - theta_right.
      strength: { mean: isEither ? -posterior.mean : posterior.mean, sd: posterior.sd },
      probability,
      evidence,
      ...(isEither ? { weaker: posterior.mean > 0 ? 'left' : 'right' } : {}),
      ...(scarce === undefined
        ? {}
        : { tooLittle: { code: 'too-few', of: scarce.of, have: scarce.legs, need: size.need } }),
    };
  });
}
