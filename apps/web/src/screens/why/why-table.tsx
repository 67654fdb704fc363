import type { WhyStepView } from '@sedgeline/projections';
import { useWords } from '../../parts/words-context.tsx';

/** What moved the chance by less than this is told together with the rest (our judgement, 2026). */
const ROW_FROM = 0.005;

/** What changed since the base, a row each, with what it did to the chance; small things and the rest in one row. */
export function WhyTable({ step }: { readonly step: WhyStepView }) {
  const { why, whySheet } = useWords();
  const { columns } = whySheet;
  const shown = step.changed.filter(({ chance }) => Math.abs(chance) >= ROW_FROM);
  const small = step.changed.filter(({ chance }) => Math.abs(chance) < ROW_FROM);
  const rest = small.reduce((sum, { chance }) => sum + chance, step.odd.chance + step.sureness.chance);
  if (shown.length === 0) return <p>{whySheet.nothingChanged}</p>;
  return (
    <table className="why-table figures">
      <thead>
        <tr>
          <th scope="col">{columns.what}</th>
          <th scope="col">{columns.before}</th>
          <th scope="col">{columns.now}</th>
          <th scope="col">{columns.chance}</th>
        </tr>
      </thead>
      <tbody>
        {shown.map(({ factor, from, to, chance }) => (
          <tr key={factor} data-factor={factor}>
            <th scope="row">{why.factor(factor)}</th>
            <td>{why.value(factor, from)}</td>
            <td>{why.value(factor, to)}</td>
            <td className="why-part">{why.part(chance)}</td>
          </tr>
        ))}
        <tr>
          <th scope="row" colSpan={3}>
            {whySheet.rest}
          </th>
          <td className="why-part">{why.part(rest)}</td>
        </tr>
      </tbody>
    </table>
  );
}
