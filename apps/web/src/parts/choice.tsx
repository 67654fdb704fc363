import { useId } from 'react';
import './field.css';

export interface ChoiceProps<Value extends string> {
  readonly legend: string;
  readonly hint?: string | undefined;
  readonly value: Value;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly onChoose: (value: Value) => void;
}

/** One of a few: every option in sight, one tap each, arrow keys between them. */
export function Choice<Value extends string>({ legend, hint, value, options, onChoose }: ChoiceProps<Value>) {
  const name = useId();
  return (
    <fieldset className="choice" aria-describedby={hint ? `${name}-hint` : undefined}>
      <legend>{legend}</legend>
      <div className="choice-options">
        {options.map((option) => (
          <label key={option.value} className="choice-option">
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChoose(option.value)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
      {hint && (
        <p className="field-hint" id={`${name}-hint`}>
          {hint}
        </p>
      )}
    </fieldset>
  );
}
