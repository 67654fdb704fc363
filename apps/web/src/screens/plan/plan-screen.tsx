import type { PlanEdit } from '@sedgeline/engine/session';
import type { DogRow, DogsView } from '@sedgeline/projections';
import { useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import { Announcer, announce } from '../../parts/announcer.tsx';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';
import type { RecordName } from '../../workers/kennel-calls.ts';
import { BrokenRules } from './broken-rules.tsx';
import { numberAfter } from './number-after.ts';
import './plan-all.css';
import { PlanCautions, WeightyCautions } from './plan-cautions.tsx';
import { isWhyEmpty, PlanEmpty } from './plan-empty.tsx';
import { PlanHead } from './plan-head.tsx';
import { PlanPrint } from './plan-print.tsx';
import { PlanStrip } from './plan-strip.tsx';
import { cardButton, PlanTimeline } from './plan-timeline.tsx';
import { RepSheet } from './rep-sheet.tsx';
import { saidOfEdit } from './said-of-edit.ts';
import { type PlanChange, type PlanState, usePlan } from './use-plan.ts';
import { useWide } from './use-wide.ts';

export interface PlanScreenProps {
  readonly record: RecordName;
  readonly dog: DogRow;
  readonly grounds: DogsView['grounds'];
  readonly onWork: (state: PlanState) => void;
}

/** A session planned at once, to be looked at, changed, printed and worked. */
export function PlanScreen({ record, dog, grounds, onWork }: PlanScreenProps) {
  const { planScreen, seasonScreen, rules: ruleWords } = useWords();
  const plan = usePlan(record, dog.dog, dog.legs);
  const isWide = useWide();
  const [openRep, setOpenRep] = useState<number | null>(null);
  const [isWishing, setWishing] = useState(false);
  const [no, setNo] = useState<string | null>(null);
  const weather = useRef<HTMLFieldSetElement>(null);
  const sheetTitle = useRef<HTMLHeadingElement>(null);
  const screen = useRef<HTMLElement>(null);
  const { state } = plan;
  const { said } = planScreen;
  const reps = state?.view.cards.length ?? 0;
  // A laptop always has a rep beside the timeline.
  const shown = openRep !== null && openRep <= reps ? openRep : isWide && reps > 0 ? 1 : null;
  const card = shown === null ? undefined : state?.view.cards[shown - 1];

  const cautions = state?.view.plan.cautions.filter((one) => reps > 0 || !isWhyEmpty(one)) ?? [];
  const broken = state?.view.plan.rules.filter(({ kept }) => !kept).map(({ rule }) => rule) ?? [];
  const brokenSaid = broken.map(ruleWords.title).join('|');
  useEffect(() => {
    if (brokenSaid !== '') announce(said.broken(brokenSaid.split('|')));
  }, [brokenSaid, said]);

  const told = (change: PlanChange, sentence: string) => {
    setNo(change === 'nothing-else' ? said.nothingElse : null);
    if (change === 'changed') announce(sentence);
  };
  const toldAnew = (change: PlanChange) => {
    if (change === 'changed') setOpenRep(null);
    told(change, said.planned);
  };
  /** The focus goes with the rep that was changed by key. */
  const edit = async (change: PlanEdit) => {
    const hadFocus = document.activeElement?.classList.contains('plan-card-open') === true;
    const at = Number(document.activeElement?.closest<HTMLElement>('[data-rep]')?.dataset.rep);
    const came = await plan.edit(change);
    told(came, saidOfEdit(said, change));
    if (came !== 'changed') return;
    if (change.do === 'add') setOpenRep(change.after + 1);
    else setOpenRep((n) => (n === null ? null : numberAfter(change, n)));
    if (hadFocus) {
      const next = numberAfter(change, at) ?? at;
      requestAnimationFrame(() =>
        (cardButton(screen.current, next) ?? cardButton(screen.current, next - 1))?.focus(),
      );
    }
  };
  const swap = (n: number) => void edit({ do: 'swap', n, turn: plan.nextTurn() });
  const add = (after: number) => void edit({ do: 'add', after, turn: plan.nextTurn() });
  const lock = (n: number) => {
    announce(state?.locked.includes(n) === true ? said.unlocked(n) : said.locked(n));
    plan.lock(n);
  };
  const openWeather = () => {
    setWishing(true);
    requestAnimationFrame(() => weather.current?.querySelector('input')?.focus());
  };
  const sheet = card !== undefined && state !== null && (
    <RepSheet
      key={card.rep.n}
      card={card}
      dogName={dog.name}
      reps={reps}
      isLocked={state.locked.includes(card.rep.n)}
      takesBreak={state.view.strip.breaksAfter.includes(card.rep.n)}
      titleRef={sheetTitle}
      onEdit={(change) => void edit(change)}
      onSwap={() => swap(card.rep.n)}
      onAdd={() => add(card.rep.n)}
      onLock={() => lock(card.rep.n)}
    />
  );

  const print = <Button onClick={() => window.print()}>{planScreen.print}</Button>;

  return (
    <section className="plan" ref={screen} aria-busy={plan.isBusy}>
      <PlanHead
        dog={dog}
        view={state?.view ?? null}
        wishes={plan.wishes}
        weather={plan.weather}
        grounds={grounds}
        isOpen={isWishing}
        weatherRef={weather}
        onOpen={setWishing}
        onWish={(change, day) => void plan.wish(change, day).then(toldAnew)}
      />
      {state === null && !plan.hasFailed && (
        <p className="plan-waiting" role="status">
          {planScreen.planning}
        </p>
      )}
      {plan.hasFailed && (
        <p className="plan-failed" role="alert">
          {planScreen.failed}
        </p>
      )}
      {state !== null && (
        <>
          <div className="plan-main not-printed">
            {reps > 0 && <PlanStrip strip={state.view.strip} rules={state.view.plan.rules} />}
            {reps === 0 ? (
              <PlanEmpty
                plan={state.view.plan}
                wishes={plan.wishes}
                onWish={(change) => void plan.wish(change).then(toldAnew)}
                onWeather={openWeather}
              />
            ) : (
              <BrokenRules
                plan={state.view.plan}
                onMend={(verdict) => void plan.mend(verdict).then((came) => told(came, said.mended))}
              />
            )}
            {no !== null && (
              <p className="plan-no" role="status">
                {no}
              </p>
            )}
            <WeightyCautions cautions={cautions} />
            <div className="plan-body">
              <div className="plan-line">
                {reps > 0 && (
                  <PlanTimeline
                    view={state.view}
                    locked={state.locked}
                    openRep={shown}
                    onOpen={(n, isByKey) => {
                      setOpenRep(isWide || n !== openRep ? n : null);
                      if (!isWide && n !== openRep) {
                        requestAnimationFrame(() =>
                          screen.current
                            ?.querySelector(`[data-rep="${n}"]`)
                            ?.scrollIntoView({ block: 'start' }),
                        );
                      }
                      if (isWide && isByKey) requestAnimationFrame(() => sheetTitle.current?.focus());
                    }}
                    onEdit={(change) => void edit(change)}
                    onSwap={swap}
                    onLock={lock}
                    sheet={isWide ? null : sheet}
                  />
                )}
                <PlanCautions cautions={cautions} />
                <div className="plan-more">
                  {reps > 0 && !isWide && print}
                  <Link className="button button-plain" href={`/season/${encodeURIComponent(dog.dog)}`}>
                    {seasonScreen.link}
                  </Link>
                </div>
              </div>
              {isWide && sheet !== false && <aside className="plan-aside">{sheet}</aside>}
            </div>
          </div>
          <div className="plan-foot not-printed">
            <Button
              disabled={!plan.canUndo}
              onClick={() => {
                plan.undo();
                announce(said.undone);
              }}
            >
              {planScreen.undo}
            </Button>
            <Button disabled={reps === 0} onClick={() => void plan.another().then(toldAnew)}>
              {planScreen.another}
            </Button>
            {reps > 0 && isWide && print}
            {reps > 0 && (
              <Button look="main" className="plan-foot-work" onClick={() => onWork(state)}>
                {dog.openSession === null ? planScreen.work : planScreen.carryOn}
              </Button>
            )}
          </div>
          {reps > 0 && <PlanPrint view={state.view} when={state.view.atMs} />}
        </>
      )}
      <Announcer />
    </section>
  );
}
