import type { SeasonForecast } from '@sedgeline/engine/season';
import { useWords } from '../../parts/words-context.tsx';

/** Every week of a forecast as figures. */
export function SeasonTable({ weeks }: { readonly weeks: SeasonForecast['weeks'] }) {
  const { season, seasonScreen, chances } = useWords();
  const { week, ready, allGood } = season.columns;
  return (
    <table className="season-table figures">
      <thead>
        <tr>
          <th scope="col">{week}</th>
          <th scope="col">{ready}</th>
          <th scope="col">{allGood}</th>
        </tr>
      </thead>
      <tbody>
        {weeks.map((one) => (
          <tr key={one.week}>
            <th scope="row">{seasonScreen.chart.week(one.week)}</th>
            <td>{chances.inHundred(one.probabilityReady)}</td>
            <td>{chances.shortInterval(one.chance, one.interval90)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
