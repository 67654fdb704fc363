import type { OwnWhistle } from '@sedgeline/engine/sound';
import type { SoundJoined } from '@sedgeline/journal';
import type { JoinProposal } from '@sedgeline/projections';
import { useEffect, useRef, useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { AskJoin } from './ask-join.tsx';
import { HeardTable } from './heard-table.tsx';
import {
  answered,
  type JoinPlace,
  joinsOf,
  newJoinDraft,
  placesLeft,
  questionsLeft,
  toggleSure,
  unanswered,
} from './join-draft.ts';
import type { HeardSource } from './listened-sound.ts';
import { TimeLine } from './time-line.tsx';
import { usePlaceNames } from './use-place-names.ts';

interface ListenResultProps {
  readonly source: HeardSource;
  readonly proposal: JoinProposal;
  readonly own: OwnWhistle | null;
  readonly onKeep: (joins: SoundJoined['joins']) => void;
  readonly onLetGo: () => void;
}

/** What was heard, beside the reps: what is asked of it first, then what fits for sure, and one key that keeps it. */
export function ListenResult({ source, proposal, own, onKeep, onLetGo }: ListenResultProps) {
  const { listenScreen } = useWords();
  const { result } = listenScreen;
  const [draft, setDraft] = useState(() => newJoinDraft(proposal));
  const [isSkipped, setSkipped] = useState(false);
  const nameOf = usePlaceNames(proposal);
  const { whistles, clicks, lengthS } = source.listened;
  const questions = questionsLeft(draft);
  const [question] = isSkipped ? [] : questions;
  const joins = joinsOf(draft);
  const nothing = proposal.calls.length === 0;
  const sure = proposal.joins.flatMap((join, n) => (join.isSure ? [{ join, n }] : []));
  return (
    <>
      <section className="listen-part listen-heard" aria-labelledby="listen-heard">
        <h2 id="listen-heard">{result.title}</h2>
        {source.notes.map((note) => (
          <Notice key={note} tone="care">
            {listenScreen.note(note)}
          </Notice>
        ))}
        {source.isNotKept && <Notice tone="care">{result.notKept}</Notice>}
        <p className="listen-lead">
          {nothing ? result.nothing : result.heard(whistles.length, clicks.length, lengthS)}
        </p>
        {proposal.untimed > 0 && (
          <p>{listenScreen.reps(proposal.reps.length + proposal.untimed, proposal.untimed)}</p>
        )}
        {!nothing && (
          <>
            <TimeLine
              proposal={proposal}
              lengthS={lengthS}
              joins={joins}
              askedS={question?.at.startS ?? null}
            />
            <p className="soft listen-lanes">{result.lanes}</p>
            <HeardTable proposal={proposal} joins={joins} />
          </>
        )}
      </section>
      {!nothing && proposal.joins.length === 0 && (
        <p className="listen-part">{proposal.wanted === 0 ? result.noReps : result.noneFits}</p>
      )}
      {(questions.length > 0 || draft.answers.length > 0) && (
        <section className="listen-part" aria-label={result.asked}>
          <h2>{result.asked}</h2>
          {sure.length === 0 && <p className="soft">{result.sureNone}</p>}
          {question === undefined ? (
            <AllAsked said={result.answered} />
          ) : (
            <AskJoin
              key={question.join}
              question={question}
              left={questions.length}
              nameOf={nameOf}
              places={placesLeft(draft, placesOf(proposal))}
              playable={source.playable}
              onAnswer={(place) => setDraft(answered(draft, question, place))}
            />
          )}
          <div className="listen-keys">
            {draft.answers.length > 0 && (
              <Button
                look="quiet"
                onClick={() => {
                  setSkipped(false);
                  setDraft(unanswered(draft));
                }}
              >
                {result.undo}
              </Button>
            )}
            {question !== undefined && questions.length > 1 && (
              <Button look="quiet" onClick={() => setSkipped(true)}>
                {result.skip}
              </Button>
            )}
          </div>
        </section>
      )}
      {sure.length > 0 && (
        <fieldset className="listen-part listen-sure">
          <legend>{result.sure}</legend>
          <p className="soft">{result.sureHint}</p>
          {sure.map(({ join, n }) => {
            const at = join.candidates[0]!;
            return (
              <label key={n} className="listen-check">
                <input
                  type="checkbox"
                  checked={!draft.takenOut.includes(n)}
                  onChange={() => setDraft(toggleSure(draft, n))}
                />
                {result.joined(at.startS, at.kind, at.count, nameOf(join))}
              </label>
            );
          })}
        </fieldset>
      )}
      <div className="listen-part listen-foot">
        <p className="soft">{own === null ? result.ownUnknown : result.own(own.pitchHz)}</p>
        {!nothing && question !== undefined && <p className="soft">{result.keepAfter(questions.length)}</p>}
        {!nothing && question === undefined && own !== null && <p className="soft">{result.keepHint}</p>}
        <div className="listen-keys">
          {!nothing && (
            <Button look="main" disabled={question !== undefined} onClick={() => onKeep(joins)}>
              {result.keep(joins.length)}
            </Button>
          )}
          <Button onClick={onLetGo}>{nothing ? listenScreen.file.another : result.letGo}</Button>
        </div>
      </div>
    </>
  );
}

/** Said in the place of the next question, and takes the keyboard's place there. */
function AllAsked({ said }: { readonly said: string }) {
  const line = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    line.current?.focus({ preventScroll: true });
  }, []);
  return (
    <p ref={line} role="status" tabIndex={-1}>
      {said}
    </p>
  );
}

/** Every leg that a whistle may belong to, in the order of the reps. */
function placesOf({ reps }: JoinProposal): readonly JoinPlace[] {
  return reps.flatMap(({ rep, legs, clicked }): JoinPlace[] => [
    ...legs.flatMap(({ skill }, leg) => (skill === 'stop' || skill === 'recall' ? [{ rep, leg }] : [])),
    ...(clicked ? [{ rep, leg: null }] : []),
  ]);
}
