import type { Skill, ToldGround } from '@sedgeline/engine/ability';
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Field } from '../../../parts/field.tsx';
import { useWords } from '../../../parts/words-context.tsx';
import type { ToldAnswer } from '../../../state/tell-level.ts';
import { readTold, type ToldDraft, type ToldFault } from './read-told.ts';

const GROUNDS = ['home', 'known', 'new'] as const satisfies readonly ToldGround[];

/** The two questions of one skill. Either may be left out; "not yet" is one tap, and so is skipping it. */
export function ToldForm({
  name,
  skill,
  skills,
  before,
  takesFocus,
  onSkill,
  onTell,
  onSkip,
}: {
  readonly name: string;
  readonly skill: Skill;
  /** Skills that may be told of. */
  readonly skills: readonly Skill[];
  /** What was told of it so far. */
  readonly before: ToldAnswer | null;
  /** Opened by a tap: then the reader goes there. */
  readonly takesFocus: boolean;
  readonly onSkill: (skill: Skill) => void;
  readonly onTell: (answer: ToldAnswer) => void;
  readonly onSkip: () => void;
}) {
  const { dog, trade, tongue } = useWords();
  const say = dog.told;
  const [draft, setDraft] = useState<ToldDraft>(() => draftOf(before, tongue.unitM));
  const [fault, setFault] = useState<ToldFault | null>(null);
  const first = useRef<HTMLSelectElement>(null);
  useEffect(() => {
    if (takesFocus) first.current?.focus();
  }, [takesFocus]);
  const set = (change: Partial<ToldDraft>) => {
    setDraft({ ...draft, ...change });
    setFault(null);
  };
  const save = (event: FormEvent) => {
    event.preventDefault();
    const read = readTold(draft, tongue.unitM);
    if (read.ok) onTell({ farthestM: read.farthestM, ground: read.ground });
    else setFault(read.fault);
  };
  const farthest = say.farthest(skill, name);
  const said = fault === null ? null : say.fault(fault);
  return (
    <form className="told-form" onSubmit={save} noValidate aria-label={trade.skillInWords(skill)}>
      <Field label={say.skill}>
        {(ties) => (
          <select
            {...ties}
            ref={first}
            value={skill}
            onChange={(event) => onSkill(event.target.value as Skill)}
          >
            {skills.map((each) => (
              <option key={each} value={each}>
                {trade.skillInWords(each)}
              </option>
            ))}
          </select>
        )}
      </Field>
      {farthest !== null && (
        <Field label={farthest} hint={say.farthestHint} error={said}>
          {(ties) => (
            <input
              {...ties}
              inputMode="decimal"
              autoComplete="off"
              value={draft.farthest}
              onChange={(event) => set({ farthest: event.target.value })}
            />
          )}
        </Field>
      )}
      <Choice
        legend={farthest === null ? say.whereWell : say.where}
        value={draft.ground}
        options={[
          ...GROUNDS.map((ground) => ({ value: ground, label: say.ground(ground, name) })),
          { value: 'unsaid' as const, label: say.groundUnsaid },
        ]}
        onChoose={(ground) => set({ ground })}
      />
      {farthest === null && said !== null && (
        <p className="field-error" role="alert">
          {said}
        </p>
      )}
      <p className="field-hint">{say.neverHint}</p>
      <div className="told-keys">
        <Button look="main" type="submit">
          {say.save}
        </Button>
        <Button look="plain" onClick={() => onTell({ farthestM: 0, ground: null })}>
          {say.never}
        </Button>
        <Button look="quiet" onClick={onSkip}>
          {say.skip}
        </Button>
      </div>
    </form>
  );
}

function draftOf(before: ToldAnswer | null, unitM: number): ToldDraft {
  if (before === null) return { farthest: '', ground: 'unsaid' };
  const { farthestM, ground } = before;
  const shown =
    farthestM === null || farthestM === 0 ? '' : String(Math.round((10 * farthestM) / unitM) / 10);
  return { farthest: shown, ground: ground ?? 'unsaid' };
}
