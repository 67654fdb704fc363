import { useId } from 'react';
import './number-keys.css';
import { TypedNumber } from './typed-number.tsx';

interface NumberKeysProps {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly unit?: string;
  readonly lessLabel: string;
  readonly moreLabel: string;
  readonly onSet: (value: number) => void;
}

/** A whole number between a key for less and a key for more, or typed. What is typed amiss is put back as it was. */
export function NumberKeys(props: NumberKeysProps) {
  const { label, value, least, most, step, unit = '', lessLabel, moreLabel, onSet } = props;
  const id = useId();
  const within = (wanted: number): number => Math.min(most, Math.max(least, wanted));
  /** To the next whole step, so that 3 and 5 more is 5. */
  const stepped = (way: 1 | -1): number =>
    within(way > 0 ? (Math.floor(value / step) + 1) * step : (Math.ceil(value / step) - 1) * step);
  return (
    <div className="number-keys">
      <label htmlFor={id}>{label}</label>
      <div className="number-keys-row">
        <button
          type="button"
          aria-label={lessLabel}
          disabled={value <= least}
          onClick={() => onSet(stepped(-1))}
        >
          −
        </button>
        <span className="number-keys-value">
          <TypedNumber
            id={id}
            shown={String(value)}
            unit={unit}
            isWhole
            onType={(number) => onSet(within(Math.round(number)))}
          />
        </span>
        <button
          type="button"
          aria-label={moreLabel}
          disabled={value >= most}
          onClick={() => onSet(stepped(1))}
        >
          +
        </button>
      </div>
    </div>
  );
}
