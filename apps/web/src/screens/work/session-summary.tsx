import { GRADES, type Grade, type Skill } from '@sedgeline/engine/ability';
import type { WorkView } from '@sedgeline/projections';
import { Link } from 'wouter';
import { GradeMark } from '../../parts/grade-mark/grade-mark.tsx';
import { useWords } from '../../parts/words-context.tsx';
import type { WorkScreen } from '../../workers/kennel-calls.ts';
import { useWhySheet } from '../why/use-why-sheet.tsx';
import { PanelMemory } from './panel-memory.tsx';
import { PanelReps } from './panel-reps.tsx';
import { SessionLog } from './session-log.tsx';
import { nextInTurn } from './turn-bar.tsx';
import { useWorkTaps } from './use-work-taps.ts';

/** A session that is closed: what was done, and what comes next. */
export function SessionSummary({ screen, said }: { readonly screen: WorkScreen; readonly said: string }) {
  const { view, turnCount: turn } = screen;
  const taps = useWorkTaps();
  const { work, trade, reasons, ask } = useWords();
  const { openWhy, sheet } = useWhySheet();
  const counts = countLegs(view);
  const minutes = ((view.closedAtMs ?? view.openedAtMs) - view.openedAtMs) / 60_000;
  const { next } = view;
  const inTurn = view.inTurn === null ? null : nextInTurn(view.inTurn, view.session);
  return (
    <section className="work-summary" aria-labelledby="summary-title">
      <p className="work-said" role="status">
        {said}
      </p>
      <h1 id="summary-title">{work.end.title(view.dogName)}</h1>
      <p className="work-sentence">
        {work.end.reps(view.done.length)}, {work.end.minutes(minutes)}
        {view.groundName !== null && `, ${view.groundName}`}
      </p>
      {view.done.length === 0 ? (
        <p>{work.end.none}</p>
      ) : (
        <table>
          <thead>
            <tr>
              <th scope="col">{work.end.column.skill}</th>
              {GRADES.map((grade) => (
                <th key={grade} scope="col">
                  <GradeMark grade={grade} size={18} /> {work.end.column[grade]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {[...counts.bySkill].map(([skill, byGrade]) => (
              <tr key={skill} data-skill={skill}>
                <th scope="row">{trade.skill(skill)}</th>
                {GRADES.map((grade) => (
                  <td key={grade} data-grade={grade}>
                    {byGrade[grade]}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <SessionLog done={view.done} isWhole onWhy={openWhy} />
      <details className="work-put-right">
        <summary>{work.panel.putRight}</summary>
        <PanelReps view={view} turn={turn} taps={taps} onWhy={openWhy}>
          {view.done[0] !== undefined && <PanelMemory view={view} asked={view.done[0].legs} taps={taps} />}
        </PanelReps>
      </details>
      {sheet}
      {counts.notDogs > 0 && <p>{work.end.notDogs(counts.notDogs)}</p>}
      {next.do === 'rep' && (
        <p className="work-sentence">
          {work.end.nextTime}: {ask.rep(next.rep.legs)} {next.reasons.slice(0, 1).map(reasons.sentence)}
        </p>
      )}
      <nav className="work-panel-keys" aria-label={work.end.nextTime}>
        {inTurn !== null && <Link href={`/work/${inTurn.session}`}>{work.inTurn.next(inTurn.name)}</Link>}
        <Link href={`/dog/${encodeURIComponent(view.dog)}`}>{work.end.toDog(view.dogName)}</Link>
        <Link href={`/work/with/${encodeURIComponent(view.dog)}`}>{work.end.again}</Link>
        <Link href="/">{work.end.toDogs}</Link>
      </nav>
    </section>
  );
}

function countLegs(view: WorkView) {
  const bySkill = new Map<Skill, Record<Grade, number>>();
  let notDogs = 0;
  for (const { skill, grade, cause } of view.done.flatMap((rep) => rep.legs)) {
    const counts = bySkill.get(skill) ?? { missed: 0, fair: 0, good: 0 };
    counts[grade] += 1;
    bySkill.set(skill, counts);
    if (cause === 'handler' || cause === 'setup') notDogs += 1;
  }
  return { bySkill, notDogs };
}
