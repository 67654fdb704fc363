import type { StandingView } from '@sedgeline/projections';
import { useWords } from '../../parts/words-context.tsx';

/** Fewer legs than this in a bin say nothing about honesty (our judgement, 2026: one leg would move it by 10 in 100). */
const FEWEST = 10;

/** How often the stated chances were right, in a line and as a table. */
export function Honesty({ honesty }: { readonly honesty: StandingView['honesty'] }) {
  const words = useWords();
  const { title, few, columns, better, fitted, corrected } = words.dog.honesty;
  const told = honesty.bins.filter((bin) => bin.legs >= FEWEST);
  const largest = [...told].sort((a, b) => b.legs - a.legs)[0];
  return (
    <section className="honesty" aria-labelledby="honesty-title">
      <h2 id="honesty-title">{title}</h2>
      {largest ? (
        <>
          <p className="honesty-said">
            {words.chances.honesty(largest.stated, largest.happened, largest.legs)}
          </p>
          <table className="figures">
            <thead>
              <tr>
                <th scope="col">{columns.stated}</th>
                <th scope="col">{columns.happened}</th>
                <th scope="col">{columns.legs}</th>
                <th scope="col">{columns.verdict}</th>
              </tr>
            </thead>
            <tbody>
              {told.map((bin) => (
                <tr key={bin.stated}>
                  <td>{words.chances.inHundred(bin.stated)}</td>
                  <td>{Math.round(bin.happened * 100)}</td>
                  <td>{bin.legs}</td>
                  <td>{words.chances.honestyVerdict(bin.stated, bin.happened)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          {honesty.logLoss !== null && honesty.alwaysAverageLogLoss !== null && (
            <p className="soft">
              {better(
                words.tongue.number(honesty.logLoss, 3),
                words.tongue.number(honesty.alwaysAverageLogLoss, 3),
              )}
            </p>
          )}
        </>
      ) : (
        <p>{few}</p>
      )}
      {honesty.fit && (
        <p className="soft">
          {fitted(honesty.fit.dogs, honesty.fit.legs, words.time.date(honesty.fit.fromMs))}
        </p>
      )}
      {honesty.recalibration && (
        <p>
          {corrected(
            honesty.recalibration.slope,
            honesty.recalibration.legs,
            words.time.date(honesty.recalibration.fromMs),
          )}
        </p>
      )}
    </section>
  );
}
