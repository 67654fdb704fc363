import { SKILLS, type Skill } from '@sedgeline/engine/ability';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { Choice } from '../../parts/choice.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { useKennel } from '../../state/kennel-store.ts';
import { openTurns } from '../../state/open-session.ts';
import { readySound } from '../../state/signals.ts';

const NONE = 'none';

/** Before several dogs are worked in turn: which, on what, and where. */
export function OpenTurnsScreen() {
  const { work, trade } = useWords();
  const dogs = useKennel((s) => s.dogs);
  const [, go] = useLocation();
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const [skill, setSkill] = useState<Skill>('stop');
  const [ground, setGround] = useState(NONE);
  const [isBusy, setBusy] = useState(false);
  if (dogs === null) return null;
  const free = dogs.dogs.filter((row) => row.openSession === null);
  const start = async () => {
    if (isBusy || chosen.length < 2) return;
    setBusy(true);
    readySound();
    const first = await openTurns({ dogs: chosen, skill, ground: ground === NONE ? null : ground });
    go(`/work/${first}`);
  };
  const toggle = (dog: string) =>
    setChosen(chosen.includes(dog) ? chosen.filter((one) => one !== dog) : [...chosen, dog]);
  return (
    <form
      className="work-open"
      onSubmit={(event) => {
        event.preventDefault();
        void start();
      }}
    >
      <h1>{work.inTurn.title}</h1>
      <p>{work.inTurn.hint}</p>
      <fieldset className="choice">
        <legend>{work.inTurn.choose}</legend>
        <div className="choice-options">
          {free.map((row) => (
            <label key={row.dog} className="choice-option">
              <input type="checkbox" checked={chosen.includes(row.dog)} onChange={() => toggle(row.dog)} />
              <span>{row.name}</span>
            </label>
          ))}
        </div>
        {dogs.dogs
          .filter((row) => row.openSession !== null)
          .map((row) => (
            <p key={row.dog} className="field-hint">
              {work.inTurn.busy(row.name)}
            </p>
          ))}
      </fieldset>
      <Choice<Skill>
        legend={work.inTurn.what}
        options={SKILLS.map((one) => ({ value: one, label: trade.skill(one) }))}
        value={skill}
        onChoose={setSkill}
      />
      <Choice
        legend={work.open.ground}
        options={[
          { value: NONE, label: work.open.noGround },
          ...dogs.grounds.map((one) => ({ value: one.ground, label: one.name })),
        ]}
        value={ground}
        onChoose={setGround}
      />
      <p role="status">{chosen.length < 2 ? work.inTurn.needTwo : work.inTurn.chosen(chosen.length)}</p>
      <button type="submit" className="work-wide" aria-disabled={chosen.length < 2}>
        {work.inTurn.go}
      </button>
      {free.length === 0 && <Link href="/">{work.open.toDogs}</Link>}
    </form>
  );
}
