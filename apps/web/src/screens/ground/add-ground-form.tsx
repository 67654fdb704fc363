import { type FormEvent, useState } from 'react';
import { watchPlace } from '../../devices/watch-place.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { checkGround, type GroundDraft, type GroundFaults, type NewGround } from './check-ground.ts';

const EMPTY: GroundDraft = { name: '', lat: '', lon: '', note: '' };

/** Adds a ground: only a name is needed. What is wrong stands at its field, and what was typed stays. */
export function AddGroundForm({
  taken,
  onAdd,
  onCancel,
}: {
  readonly taken: readonly string[];
  readonly onAdd: (ground: NewGround) => void;
  readonly onCancel: () => void;
}) {
  const { ground: words } = useWords();
  const { add } = words;
  const [draft, setDraft] = useState(EMPTY);
  const [faults, setFaults] = useState<GroundFaults>({});
  const [trouble, setTrouble] = useState<string | null>(null);
  const change = (part: Partial<GroundDraft>) => setDraft((before) => ({ ...before, ...part }));
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const checked = checkGround(draft, taken);
    if (checked.ok) onAdd(checked.ground);
    else setFaults(checked.faults);
  };
  const takePlace = () => {
    const stop = watchPlace(
      ({ latDeg, lonDeg }) => {
        stop();
        setTrouble(null);
        // Five decimals of a degree are a metre: finer than one reading is.
        change({ lat: latDeg.toFixed(5), lon: lonDeg.toFixed(5) });
      },
      (failure) => {
        setTrouble(words.walk.fault(failure));
        if (failure === 'no-signal') stop();
      },
    );
  };
  const fields = [
    { name: 'name', label: add.name, extra: { autoCapitalize: 'words' } },
    { name: 'lat', label: `${add.lat} (${add.optional})`, extra: { inputMode: 'text' } },
    { name: 'lon', label: `${add.lon} (${add.optional})`, extra: { inputMode: 'text' } },
    { name: 'note', label: `${add.note} (${add.optional})`, extra: {} },
  ] as const;
  return (
    <form className="add-dog" onSubmit={submit} noValidate aria-label={add.title}>
      <h2>{add.title}</h2>
      {fields.map(({ name, label, extra }) => {
        const fault = name === 'note' ? undefined : faults[name];
        return (
          <Field key={name} label={label} error={fault ? words.fault(fault) : null}>
            {(ties) => (
              <input
                {...ties}
                {...extra}
                value={draft[name]}
                autoComplete="off"
                onChange={(event) => change({ [name]: event.target.value })}
              />
            )}
          </Field>
        );
      })}
      <div className="add-dog-keys">
        <Button look="quiet" onClick={takePlace}>
          {add.here}
        </Button>
      </div>
      {trouble && <p role="status">{trouble}</p>}
      <div className="add-dog-keys">
        <Button look="main" type="submit">
          {add.save}
        </Button>
        <Button look="quiet" onClick={onCancel}>
          {add.cancel}
        </Button>
      </div>
    </form>
  );
}
