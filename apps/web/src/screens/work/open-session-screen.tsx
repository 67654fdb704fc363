import { SKILLS, type Skill } from '@sedgeline/engine/ability';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { Choice } from '../../parts/choice.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { useKennel } from '../../state/kennel-store.ts';
import { openSession, type SessionChoice } from '../../state/open-session.ts';
import { readySound } from '../../state/signals.ts';

const NONE = 'none';
const NEW = 'new';

/** Before a session: where, and what about; both may be left out. Two taps from the dog to the first rep. */
export function OpenSessionScreen({ dog }: { readonly dog: string }) {
  const { work, trade } = useWords();
  const dogs = useKennel((s) => s.dogs);
  const [, go] = useLocation();
  const [ground, setGround] = useState(NONE);
  const [name, setName] = useState('');
  const [focus, setFocus] = useState<Skill | typeof NONE>(NONE);
  const [isBusy, setBusy] = useState(false);
  const row = dogs?.dogs.find((one) => one.dog === dog);
  if (dogs === null) return null;
  if (row === undefined) {
    return (
      <section className="work-open">
        <p>{work.open.unknown}</p>
        <Link href="/">{work.open.toDogs}</Link>
      </section>
    );
  }
  const start = async () => {
    if (isBusy) return;
    setBusy(true);
    readySound();
    const session = await openSession({
      dog,
      ground: groundOf(ground, name),
      focus: focus === NONE ? null : focus,
    });
    go(`/work/${session}`);
  };
  const skills = [...row.skills.map(({ skill }) => skill), ...SKILLS];
  return (
    <form
      className="work-open"
      onSubmit={(event) => {
        event.preventDefault();
        void start();
      }}
    >
      <h1>{work.open.title(row.name)}</h1>
      <Choice
        legend={work.open.ground}
        options={[
          { value: NONE, label: work.open.noGround },
          ...dogs.grounds.map((one) => ({ value: one.ground, label: one.name })),
          { value: NEW, label: work.open.newGround },
        ]}
        value={ground}
        onChoose={setGround}
      />
      {ground === NEW && (
        <label className="work-note">
          {work.open.groundName}
          <input value={name} autoComplete="off" onChange={(event) => setName(event.target.value)} />
        </label>
      )}
      <Choice<Skill | typeof NONE>
        legend={work.open.focus}
        options={[
          { value: NONE, label: work.open.anything },
          ...[...new Set(skills)].map((skill) => ({ value: skill, label: trade.skill(skill) })),
        ]}
        value={focus}
        onChoose={setFocus}
      />
      <button type="submit" className="work-wide">
        {work.open.go}
      </button>
      {dogs.dogs.length > 1 && <Link href="/work/turns">{work.inTurn.title}</Link>}
    </form>
  );
}

function groundOf(ground: string, name: string): SessionChoice['ground'] {
  if (ground === NONE) return null;
  if (ground !== NEW) return { known: ground };
  return name.trim() === '' ? null : { named: name.trim() };
}
