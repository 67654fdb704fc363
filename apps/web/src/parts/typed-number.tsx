import { useEffect, useState } from 'react';

/** A number typed between its keys, with its unit; what is typed amiss is put back as it was. */
export function TypedNumber({
  id,
  shown,
  unit,
  isWhole = false,
  onType,
}: {
  readonly id: string;
  readonly shown: string;
  readonly unit: string;
  readonly isWhole?: boolean;
  /** Given a number; what it makes of it comes back as `shown`. */
  readonly onType: (value: number) => void;
}) {
  const [typed, setTyped] = useState(shown);
  useEffect(() => setTyped(shown), [shown]);
  const settle = () => {
    const number = Number(typed.replace(',', '.'));
    // Put back first: where the number changes nothing, nothing comes back.
    setTyped(shown);
    if (typed.trim() !== '' && typed !== shown && Number.isFinite(number)) onType(number);
  };
  return (
    <>
      <input
        id={id}
        inputMode={isWhole ? 'numeric' : 'decimal'}
        autoComplete="off"
        size={isWhole ? 3 : 4}
        value={typed}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={settle}
        onKeyDown={(event) => event.key === 'Enter' && settle()}
      />
      {unit !== '' && <span aria-hidden="true">{unit}</span>}
    </>
  );
}
