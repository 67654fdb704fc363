import type { ProofingCell, ProofingView } from '@sedgeline/projections';
import { useId, useState } from 'react';
import { useWords } from '../../../parts/words-context.tsx';
import { ProofingPlace } from './proofing-place.tsx';

export interface ToldRow {
  readonly key: string;
  readonly name: string;
  readonly cells: readonly ProofingCell[];
}

interface Place {
  readonly row: string;
  readonly column: number;
}

/** What is first read out: the likeliest of the places never tried within reach, else of those never tried, else the weakest. */
function firstPlace(rows: readonly ToldRow[]): Place | null {
  const places = rows.flatMap(({ key, cells }) => cells.map((cell, column) => ({ row: key, column, cell })));
  const never = places.filter(({ cell }) => cell.tried === 'never');
  const near = never.filter(({ cell }) => !cell.beyond);
  const likeliest = [...(near.length > 0 ? near : never)].sort(
    (a, b) => b.cell.now.chance - a.cell.now.chance,
  )[0];
  return likeliest ?? [...places].sort((a, b) => a.cell.now.chance - b.cell.now.chance)[0] ?? null;
}

/** One map as a table. Each place is a key that reads it out in full below. */
export function ProofingTable({
  map,
  rows,
  view,
  nowMs,
}: {
  readonly map: 'temptations' | 'grounds';
  readonly rows: readonly ToldRow[];
  readonly view: Pick<ProofingView, 'demand' | 'bands'>;
  readonly nowMs: number;
}) {
  const { proofing } = useWords();
  const { demand, bands } = view;
  const told = useId();
  const [pressed, setPressed] = useState<Place | null>(null);
  const place = pressed ?? firstPlace(rows);
  const row = rows.find(({ key }) => key === place?.row);
  const cell = place === null ? undefined : row?.cells[place.column];
  const cells = rows.flatMap((each) => each.cells);
  return (
    <section className="proofing-map" data-map={map}>
      <table className="proofing-table">
        <caption>
          <b>{proofing.caption(map, demand)}</b>{' '}
          <span className="soft figures">
            {proofing.summary(cells.filter(({ tried }) => tried !== 'never').length, cells.length)}
          </span>
        </caption>
        <thead>
          <tr>
            <th scope="col">{proofing.about[map]}</th>
            {bands.map((_, column) => (
              <th key={column} scope="col" className="figures">
                {proofing.band(demand, bands, column)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, name, cells: inRow }) => (
            <tr key={key}>
              <th scope="row">{name}</th>
              {inRow.map((each, column) => (
                <td key={column}>
                  <ProofingPlace
                    cell={each}
                    isPressed={place?.row === key && place.column === column}
                    told={told}
                    onPress={() => setPressed({ row: key, column })}
                  />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p id={told} className="proofing-told figures" role="status">
        {row !== undefined &&
          place !== null &&
          cell !== undefined &&
          proofing.sentence(row.name, demand, bands, place.column, cell, nowMs)}
      </p>
    </section>
  );
}
