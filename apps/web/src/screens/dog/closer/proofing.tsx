import type { Skill } from '@sedgeline/engine/ability';
import type { ProofingView } from '@sedgeline/projections';
import { useCallback } from 'react';
import { useWords } from '../../../parts/words-context.tsx';
import { proofingOf } from '../../../state/kennel.ts';
import './proofing.css';
import { ProofingTable, type ToldRow } from './proofing-table.tsx';
import { useAnswer } from './use-answer.ts';

/** What a dog has been tried at in a skill: two maps, each a table whose places can be read out in full. */
export function Proofing({
  dog,
  skill,
  legs,
  nowMs,
}: {
  readonly dog: string;
  readonly skill: Skill;
  /** Legs of the skill so far: asked again when there are more. */
  readonly legs: number;
  readonly nowMs: number;
}) {
  const { progress } = useWords();
  // biome-ignore lint/correctness/useExhaustiveDependencies: legs says when the record has more to tell
  const answer = useAnswer(useCallback(() => proofingOf(dog, skill), [dog, skill, legs]));
  if (answer === 'waiting') return <p className="closer-waiting">{progress.waiting}</p>;
  if (answer === 'failed') return <p role="alert">{progress.failed}</p>;
  return answer.view === null ? null : <Told view={answer.view} nowMs={nowMs} />;
}

function Told({ view, nowMs }: { readonly view: ProofingView; readonly nowMs: number }) {
  const { proofing } = useWords();
  const temptations = view.temptations.map(
    ({ of, cells }): ToldRow => ({ key: of, name: proofing.temptation(of), cells }),
  );
  const grounds = view.grounds.map(({ of, cells }): ToldRow => {
    const key = of.kind === 'ground' ? of.ground : of.kind;
    return { key, name: proofing.ground(of), cells };
  });
  return (
    <div className="proofing">
      {view.legs === 0 && <p>{proofing.none(view.name)}</p>}
      <p className="soft closer-key">
        {proofing.key} {proofing.press}
      </p>
      <div className="proofing-maps">
        <ProofingTable map="temptations" rows={temptations} view={view} nowMs={nowMs} />
        <ProofingTable map="grounds" rows={grounds} view={view} nowMs={nowMs} />
      </div>
    </div>
  );
}
