import { SKILLS, type Skill } from '@sedgeline/engine/ability';
import type { StandingView } from '@sedgeline/projections';
import { useRef, useState } from 'react';
import { Button } from '../../../parts/button.tsx';
import { useWords } from '../../../parts/words-context.tsx';
import type { ToldAnswer } from '../../../state/tell-level.ts';
import './told.css';
import { ToldForm } from './told-form.tsx';

/** Asked of first where nothing was worked yet: what most lessons begin with (common practice, no source). */
const ASKED_FIRST: Skill = 'stop';

/**
 * What a handler tells of a dog that has little record: two questions a skill, which may be skipped, answered later, changed and taken
 * back. Nothing is asked of a skill that the record knows.
 */
export function ToldPart({
  view,
  isNew,
  onTell,
}: {
  readonly view: StandingView;
  /** New to the record: the first questions stand there unasked for. */
  readonly isNew: boolean;
  /** `null` takes back what was told. */
  readonly onTell: (skill: Skill, answer: ToldAnswer | null) => void;
}) {
  const { dog, trade } = useWords();
  const say = dog.told;
  const [asked, setAsked] = useState<Skill | 'skipped' | null>(null);
  const told = view.skills.filter((one) => one.told !== null);
  const isTold = (skill: Skill) => told.some((one) => one.skill === skill);
  const known = view.skills.filter((one) => one.known && one.told === null).map(({ skill }) => skill);
  const open = SKILLS.filter((skill) => !known.includes(skill));
  const worked = view.skills.filter((one) => !one.known).map(({ skill }) => skill);
  const untold = [...worked, ASKED_FIRST, ...open].find((skill) => open.includes(skill) && !isTold(skill));
  const unasked = isNew && told.length === 0 ? (untold ?? null) : null;
  const asking = asked === 'skipped' ? null : (asked ?? unasked);
  const title = useRef<HTMLHeadingElement>(null);
  /** The form closes under the finger: the reader goes to the heading. */
  const close = () => {
    setAsked('skipped');
    title.current?.focus();
  };
  const takeBack = (skill: Skill) => {
    onTell(skill, null);
    close();
  };
  if (open.length === 0 && told.length === 0) return null;
  return (
    <section className="told not-printed" aria-labelledby="told-title">
      <h2 id="told-title" ref={title} tabIndex={-1}>
        {say.title(view.name)}
      </h2>
      {asking !== null && <p className="soft">{say.teach(view.name)}</p>}
      {told.length > 0 && (
        <ul className="told-list">
          {told.map(({ skill, legs, told: word }) => {
            const name = trade.skillInWords(skill);
            return (
              <li key={skill}>
                <p>
                  <b>{name}</b>
                  <span>{say.said(view.name, word ?? NOTHING)}</span>
                  <span className="soft">{say.standing(legs, word?.left ?? 0)}</span>
                </p>
                <div className="told-keys">
                  <Button look="plain" onClick={() => setAsked(skill)} aria-label={say.changeOf(name)}>
                    {say.change}
                  </Button>
                  <Button look="quiet" onClick={() => takeBack(skill)} aria-label={say.takeBackOf(name)}>
                    {say.takeBack}
                  </Button>
                </div>
              </li>
            );
          })}
        </ul>
      )}
      {asking !== null ? (
        <ToldForm
          key={asking}
          name={view.name}
          skill={asking}
          skills={open}
          before={told.find(({ skill }) => skill === asking)?.told ?? null}
          takesFocus={asked !== null}
          onSkill={setAsked}
          onTell={(answer) => {
            onTell(asking, answer);
            close();
          }}
          onSkip={close}
        />
      ) : (
        untold !== undefined && (
          <div className="told-keys">
            <Button look="quiet" onClick={() => setAsked(untold)}>
              {say.another}
            </Button>
          </div>
        )
      )}
    </section>
  );
}

const NOTHING: ToldAnswer = { farthestM: null, ground: null };
