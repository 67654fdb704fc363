import type { SkillStanding } from '@sedgeline/projections';
import { type ReactNode, useState } from 'react';
import { useWords } from '../../../parts/words-context.tsx';
import './closer.css';
import { Progress } from './progress.tsx';
import { Proofing } from './proofing.tsx';

export interface LookCloserProps {
  readonly dog: string;
  readonly standing: SkillStanding;
  readonly nowMs: number;
}

/** A skill looked at closer: how it came on, and what has been tried where. Each is worked out when it is opened. */
export function LookCloser({ dog, standing: { skill, legs }, nowMs }: LookCloserProps) {
  const { progress, proofing, trade } = useWords();
  const name = trade.skillInWords(skill);
  return (
    <div className="closer not-printed">
      <Disclosure word={progress.open} name={progress.openFor(name)}>
        <Progress dog={dog} skill={skill} legs={legs} />
      </Disclosure>
      <Disclosure word={proofing.open} name={proofing.openFor(name)}>
        <Proofing dog={dog} skill={skill} legs={legs} nowMs={nowMs} />
      </Disclosure>
    </div>
  );
}

function Disclosure({
  word,
  name,
  children,
}: {
  readonly word: string;
  readonly name: string;
  readonly children: ReactNode;
}) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary aria-label={name}>{word}</summary>
      {isOpen && <div className="closer-body">{children}</div>}
    </details>
  );
}
