import type { Skill } from '@sedgeline/engine/ability';
import { useWords } from '../../parts/words-context.tsx';
import type { WorkScreen } from '../../workers/kennel-calls.ts';
import { useWhySheet } from '../why/use-why-sheet.tsx';
import { AfterStrip } from './after-strip.tsx';
import { BREAK_MINUTES, type WorkTaps } from './use-work-taps.ts';

interface PauseScreenProps {
  readonly screen: WorkScreen;
  readonly taps: WorkTaps;
}

/** Where no rep comes next: a break or the end is suggested, and the handler may think otherwise. */
export function PauseScreen({ screen, taps }: PauseScreenProps) {
  const { work, reasons } = useWords();
  const { openWhy, sheet } = useWhySheet();
  const { view, after } = screen;
  const { next } = view;
  const minutes = next.do === 'break' ? next.minutes : BREAK_MINUTES;
  const isEnd = next.do === 'end';
  return (
    <section className="work-pause" aria-label={isEnd ? work.end.suggest : work.break.due}>
      <h2>{isEnd ? work.end.suggest : work.break.due}</h2>
      {next.reasons.map((reason) => (
        <p key={reason.code} className="work-sentence">
          {reasons.sentence(reason)}
        </p>
      ))}
      {next.plan !== undefined && (
        <p className="work-course" data-course={next.plan.do}>
          {work.planLine(next.plan, null)}
        </p>
      )}
      {after !== null && (
        <AfterStrip after={after} onCause={taps.cause} onExpectation={taps.expectation} onWhy={openWhy} />
      )}
      {sheet}
      <div className="work-pause-keys">
        {isEnd ? (
          <button type="button" className="work-wide" onClick={taps.close}>
            {work.end.close}
          </button>
        ) : (
          <button type="button" className="work-wide" onClick={() => taps.startBreak(minutes)}>
            {work.break.take(minutes)}
          </button>
        )}
        <button
          type="button"
          className="work-second"
          onClick={() => taps.send({ do: 'skill', skill: lastSkill(screen) })}
        >
          {isEnd ? work.end.oneMore : work.break.goOn}
        </button>
        <button type="button" className="work-second" aria-disabled={view.undo === null} onClick={taps.undo}>
          {work.undo}
        </button>
        {!isEnd && (
          <button type="button" className="work-second" onClick={taps.close}>
            {work.end.close}
          </button>
        )}
      </div>
    </section>
  );
}

/** What the session is about, or what was worked last. */
function lastSkill({ view }: WorkScreen): Skill {
  return view.focus ?? view.done.at(-1)?.legs[0]?.skill ?? 'line';
}
