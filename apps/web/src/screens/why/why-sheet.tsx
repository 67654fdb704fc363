import type { WhyView } from '@sedgeline/projections';
import { useEffect, useId, useRef, useState } from 'react';
import { useWords } from '../../parts/words-context.tsx';
import { whyOf } from '../../state/kennel.ts';
import './why.css';
import { WhyLeg } from './why-leg.tsx';

/** What the worker answered: a view, `null` for a rep that is gone, or that it could not be worked out. */
type Answer = { readonly view: WhyView | null } | 'failed' | 'waiting';

/** Why a rep went as it did: a sheet over the screen, with what did not go well first. Escape or a tap beside it closes it. */
export function WhySheet({ rep, onClose }: { readonly rep: string; readonly onClose: () => void }) {
  const { whySheet, time } = useWords();
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const answer = useWhy(rep);
  useEffect(() => {
    const shown = dialog.current;
    if (shown === null) return;
    shown.showModal();
    const closeBeside = (event: MouseEvent) => event.target === shown && shown.close();
    shown.addEventListener('click', closeBeside);
    return () => shown.removeEventListener('click', closeBeside);
  }, []);
  const view = typeof answer === 'string' ? null : answer.view;
  return (
    <dialog ref={dialog} className="why" aria-labelledby={title} onClose={onClose}>
      <div className="why-sheet">
        <div className="why-head">
          <div>
            <h2 id={title}>{view === null ? whySheet.name : whySheet.title(view.dogName, view.repNumber)}</h2>
            {view !== null && <p className="soft">{time.date(view.atMs)}</p>}
          </div>
          <button type="button" className="why-close" onClick={() => dialog.current?.close()}>
            {whySheet.close}
          </button>
        </div>
        {answer === 'waiting' && (
          <p className="why-waiting" role="status">
            {whySheet.waiting}
          </p>
        )}
        {answer === 'failed' && <p role="alert">{whySheet.failed}</p>}
        {typeof answer !== 'string' && <Told view={answer.view} />}
      </div>
    </dialog>
  );
}

function Told({ view }: { readonly view: WhyView | null }) {
  const { whySheet } = useWords();
  if (view === null) return <p>{whySheet.gone}</p>;
  if (view.legs.length === 0) return <p>{whySheet.noLegs}</p>;
  const wrong = view.legs.filter(({ grade }) => grade !== 'good');
  const well = view.legs.filter(({ grade }) => grade === 'good');
  return (
    <>
      {[...wrong, ...well].map((leg) => (
        <WhyLeg key={leg.leg} leg={leg} form={view.form} />
      ))}
      <p className="soft why-note">{whySheet.stated}</p>
    </>
  );
}

function useWhy(rep: string): Answer {
  const [answer, setAnswer] = useState<Answer>('waiting');
  useEffect(() => {
    let isShown = true;
    whyOf(rep).then(
      (view) => isShown && setAnswer({ view }),
      () => isShown && setAnswer('failed'),
    );
    return () => {
      isShown = false;
    };
  }, [rep]);
  return answer;
}
