import type { Ask } from '@sedgeline/engine/ability';
import { useId } from 'react';
import { TypedNumber } from '../typed-number.tsx';
import { useWords } from '../words-context.tsx';

interface StepperProps {
  readonly field: keyof Ask;
  readonly title: string;
  /** In the shown unit. */
  readonly value: number;
  readonly unit: string;
  /** Sizes of the steps in the shown unit, small first: one or two. */
  readonly steps: readonly number[];
  readonly onSet: (value: number) => void;
}

/** At most one decimal. */
const tidy = (value: number): number => Math.round(value * 10) / 10;

/** A number between its keys: less and more by a big and a small step, or typed. */
export function Stepper({ field, title, value, unit, steps, onSet }: StepperProps) {
  const { work, tongue } = useWords();
  const id = useId();
  const said = (step: number): string => `${tongue.number(step, 1)} ${unit}`.trim();
  return (
    <div className="work-stepper" data-field={field}>
      <label htmlFor={id}>{title}</label>
      <div className="work-stepper-keys">
        {[...steps].reverse().map((step) => (
          <button
            key={-step}
            type="button"
            aria-label={work.less(field, said(step))}
            onClick={() => onSet(value - step)}
          >
            −{tongue.number(step, 1)}
          </button>
        ))}
        <span className="work-stepper-value">
          <TypedNumber id={id} shown={String(tidy(value))} unit={unit} onType={onSet} />
        </span>
        {steps.map((step) => (
          <button
            key={step}
            type="button"
            aria-label={work.add(field, said(step))}
            onClick={() => onSet(value + step)}
          >
            +{tongue.number(step, 1)}
          </button>
        ))}
      </div>
    </div>
  );
}
