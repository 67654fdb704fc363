import type { WhyLegView, WhyStepView, WhyView } from '@sedgeline/projections';
import { ChanceBar } from '../../parts/chance-bar/chance-bar.tsx';
import { GradeMark } from '../../parts/grade-mark/grade-mark.tsx';
import { LinkSummary } from '../../parts/link-summary.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { WhyTable } from './why-table.tsx';

/** One leg: what came of it, the verdict, what changed in a sentence, and the figures behind it. */
export function WhyLeg({ leg, form }: { readonly leg: WhyLegView; readonly form: WhyView['form'] }) {
  const { why, whySheet, chances, trade } = useWords();
  const { skill, grade, verdict, step, cause } = leg;
  const given = cause === null ? undefined : whySheet.given[cause];
  return (
    <section className="why-leg" data-verdict={verdict} aria-label={trade.skillInWords(skill)}>
      <p className="why-outcome">
        <GradeMark grade={grade} size={20} />
        {why.outcome(skill, grade)}
      </p>
      <h3>{why.title(verdict)}</h3>
      <p className="why-against">{why.against(leg)}</p>
      <p>
        {why.meaning(verdict)}
        {verdict === 'form' && ` ${whySheet.form(chances.inHundred(form.poorProbability))}`}
      </p>
      {given !== undefined && <p className="soft">{given}</p>}
      {step !== null && (
        <details open={grade !== 'good'}>
          <LinkSummary>{whySheet.figures}</LinkSummary>
          <Figures leg={leg} step={step} />
        </details>
      )}
    </section>
  );
}

function Figures({ leg, step }: { readonly leg: WhyLegView; readonly step: WhyStepView }) {
  const { whySheet, ask, time } = useWords();
  const { since } = step;
  return (
    <div className="why-figures">
      <ChanceBar of={whySheet.chanceThen} chance={step.chanceAtBase} interval90={step.intervalAtBase90} />
      <ChanceBar of={whySheet.chanceNow} chance={leg.chanceBefore} interval90={leg.interval90} />
      <p className="soft">
        {whySheet.since(since.repNumber, time.date(since.atMs))}: {ask.figures(leg.skill, since.ask)}.
      </p>
      <WhyTable step={step} />
      <p className="soft figures">{whySheet.step(step.stretch.mean, step.stretch.sd)}</p>
    </div>
  );
}
