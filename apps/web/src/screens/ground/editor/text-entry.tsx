import { useEffect, useState } from 'react';
import { Field } from '../../../parts/field.tsx';

export interface TextEntryProps {
  readonly label: string;
  readonly value: string;
  /** Takes what was typed; a sentence comes back where it is not good. */
  readonly onEnter: (text: string) => string | null;
  readonly isFigure?: boolean;
}

/** A field that is taken when it is left or entered, one step of undo for the whole of it. */
export function TextEntry({ label, value, onEnter, isFigure = false }: TextEntryProps) {
  const [typed, setTyped] = useState(value);
  const [error, setError] = useState<string | null>(null);
  useEffect(() => {
    setTyped(value);
    setError(null);
  }, [value]);
  const enter = () => {
    if (typed !== value) setError(onEnter(typed));
  };
  return (
    <Field label={label} error={error}>
      {(ties) => (
        <input
          {...ties}
          className={isFigure ? 'figures' : undefined}
          inputMode={isFigure ? 'decimal' : 'text'}
          autoComplete="off"
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={enter}
          onKeyDown={(event) => {
            if (event.key === 'Enter') enter();
          }}
        />
      )}
    </Field>
  );
}
