import type { StandingView } from '@sedgeline/projections';
import { type FormEvent, useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** A dog that is not to be worked for now: says so, and till when; plans are empty meanwhile. */
export function RestPart({
  name,
  rest,
  onRest,
  onBack,
}: {
  readonly name: string;
  readonly rest: StandingView['rest'];
  /** `until` is a date, or empty for no end. */
  readonly onRest: (until: string) => void;
  readonly onBack: () => void;
}) {
  const words = useWords();
  const { rest: say } = words.dog;
  const [isAsking, setAsking] = useState(false);
  const [until, setUntil] = useState('');
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setAsking(false);
    onRest(until);
  };
  if (rest !== null) {
    return (
      <section className="dog-rest not-printed" aria-label={say.title}>
        <p role="status">
          {say.isResting(name, rest.untilMs === null ? null : words.time.date(rest.untilMs))}
        </p>
        <Button look="plain" onClick={onBack}>
          {say.back}
        </Button>
      </section>
    );
  }
  if (!isAsking) {
    return (
      <div className="dog-rest not-printed">
        <Button look="quiet" onClick={() => setAsking(true)}>
          {say.put(name)}
        </Button>
      </div>
    );
  }
  return (
    <form className="dog-rest not-printed" onSubmit={submit} aria-label={say.title}>
      <Field label={say.until} hint={say.untilHint}>
        {(ties) => (
          <input {...ties} type="date" value={until} onChange={(event) => setUntil(event.target.value)} />
        )}
      </Field>
      <Button look="main" type="submit">
        {say.put(name)}
      </Button>
      <Button look="quiet" onClick={() => setAsking(false)}>
        {words.dogs.add.cancel}
      </Button>
    </form>
  );
}
