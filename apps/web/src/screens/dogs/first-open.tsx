import type { Skill } from '@sedgeline/engine/ability';
import { SKILLS } from '@sedgeline/engine/ability';
import { type FormEvent, useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { FieldCard } from '../../parts/field-card/field-card.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { checkDog } from './check-dog.ts';
import { FIRST_PICTURE } from './first-picture.ts';

export interface FirstOpenProps {
  readonly nowMs: number;
  /** Adds the dog, opens a session on the skill and goes to Work. */
  readonly onStart: (start: { readonly name: string; readonly skill: Skill }) => void;
  readonly onLookRound: () => void;
}

/** The first open: one line that teaches, a name, a skill, go. */
export function FirstOpen({ nowMs, onStart, onLookRound }: FirstOpenProps) {
  const words = useWords();
  const { first } = words.dogs;
  const [name, setName] = useState('');
  const [skill, setSkill] = useState<Skill>('stop');
  const [error, setError] = useState<string | null>(null);

  const start = (event: FormEvent) => {
    event.preventDefault();
    const checked = checkDog({ name, born: '', sex: 'unsaid', breed: '' }, [], nowMs);
    if (!checked.ok) return setError(checked.faults.name ? words.dogs.fault(checked.faults.name) : null);
    onStart({ name: checked.dog.name, skill });
  };

  return (
    <section className="first-open" aria-labelledby="first-title">
      <div className="first-picture" aria-hidden="true">
        <FieldCard picture={FIRST_PICTURE} size="low" />
      </div>
      <div className="first-form">
        <h1 id="first-title">{first.title}</h1>
        <p className="first-teach">{first.teach}</p>
        <form onSubmit={start} noValidate>
          <Field label={first.name} error={error}>
            {(ties) => (
              <input
                {...ties}
                value={name}
                autoComplete="off"
                autoCapitalize="words"
                enterKeyHint="go"
                onChange={(event) => {
                  setName(event.target.value);
                  setError(null);
                }}
              />
            )}
          </Field>
          <Field label={first.skill}>
            {(ties) => (
              <select {...ties} value={skill} onChange={(event) => setSkill(event.target.value as Skill)}>
                {SKILLS.map((each) => (
                  <option key={each} value={each}>
                    {words.trade.skillInWords(each)}
                  </option>
                ))}
              </select>
            )}
          </Field>
          <Button look="main" type="submit">
            {first.go}
          </Button>
        </form>
        <p className="soft first-kept">{first.kept}</p>
        <div className="first-demo">
          <Button onClick={onLookRound}>{first.demo}</Button>
          <p className="soft">{first.demoNote}</p>
        </div>
      </div>
    </section>
  );
}
