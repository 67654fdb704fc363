import type { Ask, Skill } from '@sedgeline/engine/ability';
import type { SeasonView } from '@sedgeline/projections';
import { type FormEvent, useId, useState } from 'react';
import { AskEditor } from '../../parts/ask-editor/ask-editor.tsx';
import { Button } from '../../parts/button.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { type GoalDraft, type GoalFault, goalFault, withAsk } from './goal-draft.ts';

/** Chances that may be wanted at a tap. */
const WANTED = [0.6, 0.7, 0.8, 0.9, 0.95] as const;

export interface GoalFormProps {
  readonly season: SeasonView;
  readonly draft: GoalDraft;
  readonly nowMs: number;
  readonly onSave: (draft: GoalDraft) => void;
  readonly onCancel: () => void;
}

/** A goal in a few taps: a skill, how hard, how sure; the name and the date may be left out. */
export function GoalForm({ season, draft: first, nowMs, onSave, onCancel }: GoalFormProps) {
  const { seasonScreen, trade } = useWords();
  const { form } = seasonScreen;
  const id = useId();
  const [draft, setDraft] = useState(first);
  const [skill, setSkill] = useState<Skill>('stop');
  const [byHand, setByHand] = useState<number | null>(null);
  const [fault, setFault] = useState<GoalFault | null>(null);
  const chosen = season.skills.find((one) => one.skill === skill);
  const set = (change: Partial<GoalDraft>) => {
    setDraft((before) => ({ ...before, ...change }));
    setFault(null);
  };
  const setAsk = (at: number, change: Partial<GoalDraft['asks'][number]>) =>
    set({ asks: draft.asks.map((one, n) => (n === at ? { ...one, ...change } : one)) });
  const save = (event: FormEvent) => {
    event.preventDefault();
    const wrong = goalFault(draft, nowMs);
    if (wrong !== null) return setFault(wrong);
    const name = draft.name.trim() || seasonScreen.nameOf(draft.asks.map((one) => one.skill));
    onSave({ ...draft, name });
  };
  return (
    <form className="goal-form" onSubmit={save} aria-labelledby={`${id}-title`} noValidate>
      <h2 id={`${id}-title`}>{form.title}</h2>
      <Choice
        legend={form.skill}
        options={season.skills.map((one) => ({ value: one.skill, label: trade.skill(one.skill) }))}
        value={skill}
        onChoose={setSkill}
      />
      <fieldset className="goal-named">
        <legend>{form.ask}</legend>
        {chosen?.asks.map(({ name, ask, chance }) => (
          <button
            key={name}
            type="button"
            className="goal-named-ask"
            aria-label={`${form.addAsk(name, skill)}, ${form.figures(skill, ask)}, ${form.nowIs(chance)}`}
            onClick={() => {
              set({ asks: withAsk(draft.asks, { skill, ask }) });
              setByHand(null);
            }}
          >
            <b>{form.named(name)}</b>
            <span>{form.figures(skill, ask)}</span>
            <span className="soft figures">{form.nowIs(chance)}</span>
          </button>
        ))}
      </fieldset>
      <section aria-labelledby={`${id}-asks`} className="goal-chosen">
        <h3 id={`${id}-asks`}>{form.asks}</h3>
        {draft.asks.length === 0 && <p className="soft">{form.none}</p>}
        <ul>
          {draft.asks.map((one, at) => (
            <li key={`${one.skill} ${at}`}>
              <p>
                <b>{seasonScreen.askName(one.skill, one.ask)}</b>
              </p>
              <Choice
                legend={form.wanted}
                options={[...new Set([...WANTED, one.chance])]
                  .toSorted((a, b) => a - b)
                  .map((chance) => ({ value: String(chance), label: form.wantedIs(chance) }))}
                value={String(one.chance)}
                onChoose={(chance) => setAsk(at, { chance: Number(chance) })}
              />
              <div className="goal-keys">
                <Button
                  look="quiet"
                  aria-expanded={byHand === at}
                  onClick={() => setByHand(byHand === at ? null : at)}
                >
                  {form.own}
                </Button>
                <Button
                  look="quiet"
                  aria-label={form.remove(seasonScreen.askName(one.skill, one.ask))}
                  onClick={() => {
                    set({ asks: draft.asks.filter((_, n) => n !== at) });
                    setByHand(null);
                  }}
                >
                  {form.removeKey}
                </Button>
              </div>
              {byHand === at && (
                <div className="goal-by-hand ask-by-hand">
                  <AskEditor
                    leg={one}
                    onSet={(field: keyof Ask, value: Ask[keyof Ask]) =>
                      setAsk(at, { ask: { ...one.ask, [field]: value } })
                    }
                  />
                </div>
              )}
            </li>
          ))}
        </ul>
        {fault === 'no-ask' && (
          <p className="field-error" role="alert">
            {form.noAsk}
          </p>
        )}
      </section>
      <div className="goal-when">
        <Field label={form.by} hint={form.byHint} error={fault === 'bad-date' ? form.badDate : null}>
          {(ties) => (
            <input
              {...ties}
              type="date"
              value={draft.by}
              onChange={(event) => set({ by: event.target.value })}
            />
          )}
        </Field>
        <Field label={form.name} hint={form.nameHint}>
          {(ties) => (
            <input
              {...ties}
              autoComplete="off"
              maxLength={200}
              value={draft.name}
              onChange={(event) => set({ name: event.target.value })}
            />
          )}
        </Field>
      </div>
      <div className="goal-keys">
        <Button look="main" type="submit">
          {form.save}
        </Button>
        <Button onClick={onCancel}>{form.cancel}</Button>
      </div>
    </form>
  );
}
