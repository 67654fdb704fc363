import { type FormEvent, useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { checkDog, type DogDraft, type DogFaults, type NewDog } from './check-dog.ts';

const EMPTY: DogDraft = { name: '', born: '', sex: 'unsaid', breed: '' };

/** Adds a dog: only a name is needed. What is wrong stands at its field, and what was typed stays. */
export function AddDogForm({
  taken,
  nowMs,
  onAdd,
  onCancel,
}: {
  readonly taken: readonly string[];
  readonly nowMs: number;
  readonly onAdd: (dog: NewDog) => void;
  readonly onCancel: () => void;
}) {
  const words = useWords();
  const { add } = words.dogs;
  const [draft, setDraft] = useState(EMPTY);
  const [faults, setFaults] = useState<DogFaults>({});
  const change = (part: Partial<DogDraft>) => setDraft({ ...draft, ...part });
  const said = (fault: DogFaults[keyof DogFaults]) => (fault ? words.dogs.fault(fault) : null);

  const submit = (event: FormEvent) => {
    event.preventDefault();
    const checked = checkDog(draft, taken, nowMs);
    if (checked.ok) onAdd(checked.dog);
    else setFaults(checked.faults);
  };

  return (
    <form className="add-dog" onSubmit={submit} noValidate aria-label={add.title}>
      <h2>{add.title}</h2>
      <Field label={add.name} error={said(faults.name)}>
        {(ties) => (
          <input
            {...ties}
            value={draft.name}
            autoComplete="off"
            autoCapitalize="words"
            onChange={(event) => change({ name: event.target.value })}
          />
        )}
      </Field>
      <Field label={add.born} hint={add.bornHint} error={said(faults.born)}>
        {(ties) => (
          <input
            {...ties}
            type="date"
            value={draft.born}
            onChange={(event) => change({ born: event.target.value })}
          />
        )}
      </Field>
      <Choice
        legend={add.sex}
        value={draft.sex}
        options={(['bitch', 'dog', 'unsaid'] as const).map((value) => ({ value, label: add.sexes[value] }))}
        onChoose={(sex) => change({ sex })}
      />
      <Field label={`${add.breed} (${add.optional})`}>
        {(ties) => (
          <input
            {...ties}
            value={draft.breed}
            autoComplete="off"
            onChange={(event) => change({ breed: event.target.value })}
          />
        )}
      </Field>
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
