import { useWords } from '../words-context.tsx';
import './chance-bar.css';

export interface ChanceBarProps {
  /** What the chance is of, in words: "a prompt stop". */
  readonly of?: string | undefined;
  readonly chance: number;
  readonly interval90: readonly [number, number];
  /** A thin bar with no sentence under it, for tables and small cards; the sentence is then read out. */
  readonly thin?: boolean;
}

/** A chance with its band: the bar fills to the chance, the thick stroke is what it may be, the ring what we say. */
export function ChanceBar({ of, chance, interval90, thin = false }: ChanceBarProps) {
  const words = useWords();
  const sentence = words.chances.withInterval(chance, interval90);
  const readOut = of ? `${of}: ${sentence}` : sentence;
  const [low, high] = interval90;
  const percent = (share: number): string => `${Math.round(Math.min(1, Math.max(0, share)) * 1000) / 10}%`;
  return (
    <div className={thin ? 'chance-bar chance-bar-thin' : 'chance-bar'} data-chance={chance}>
      <svg
        width="100%"
        height={thin ? 14 : 30}
        role={thin ? 'img' : 'presentation'}
        aria-label={thin ? readOut : undefined}
        aria-hidden={thin ? undefined : true}
      >
        <rect
          className="cb-track"
          x="0"
          y={thin ? 4 : 8}
          width="100%"
          height={thin ? 6 : 14}
          rx={thin ? 3 : 7}
        />
        {!thin && <rect className="cb-fill" x="0" y="8" width={percent(chance)} height="14" rx="7" />}
        <line
          className="cb-band"
          x1={percent(low)}
          x2={percent(high)}
          y1={thin ? 7 : 15}
          y2={thin ? 7 : 15}
        />
        <circle className="cb-dot" cx={percent(chance)} cy={thin ? 7 : 15} r={thin ? 5 : 8} />
      </svg>
      {!thin && (
        <p className="cb-said">
          <span>{of}</span> <b className="figures">{sentence}</b>
        </p>
      )}
    </div>
  );
}
