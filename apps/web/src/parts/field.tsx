import { type ReactNode, useId } from 'react';
import './field.css';

export interface FieldProps {
  readonly label: string;
  readonly hint?: string | undefined;
  /** What is wrong with what was typed; it stands at the field, and what was typed stays. */
  readonly error?: string | null | undefined;
  /** The control itself, given the identities that tie it to its label, hint and error. */
  readonly children: (ties: FieldTies) => ReactNode;
}

export interface FieldTies {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': boolean;
}

/** A labelled field of a form. */
export function Field({ label, hint, error, children }: FieldProps) {
  const id = useId();
  const described = [hint ? `${id}-hint` : '', error ? `${id}-error` : '']
    .filter((part) => part !== '')
    .join(' ');
  return (
    <div className={error ? 'field field-wrong' : 'field'}>
      <label htmlFor={id}>{label}</label>
      {children({ id, 'aria-describedby': described || undefined, 'aria-invalid': Boolean(error) })}
      {hint && (
        <p className="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {error && (
        <p className="field-error" id={`${id}-error`} role="alert">
          {error}
        </p>
      )}
    </div>
  );
}
