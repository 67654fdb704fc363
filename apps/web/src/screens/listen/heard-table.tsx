import type { SoundJoined } from '@sedgeline/journal';
import type { JoinProposal } from '@sedgeline/projections';
import { LinkSummary } from '../../parts/link-summary.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { usePlaceNames } from './use-place-names.ts';

interface HeardTableProps {
  readonly proposal: JoinProposal;
  readonly joins: SoundJoined['joins'];
}

/** The time line as a table: every call, and what it belongs to. */
export function HeardTable({ proposal, joins }: HeardTableProps) {
  const { at, call: callWords, result } = useWords().listenScreen;
  const nameOf = usePlaceNames(proposal);
  return (
    <details className="listen-table">
      <LinkSummary>{result.lineTable}</LinkSummary>
      <table>
        <thead>
          <tr>
            <th scope="col">{result.columns.when}</th>
            <th scope="col">{result.columns.what}</th>
            <th scope="col">{result.columns.pitch}</th>
            <th scope="col">{result.columns.rep}</th>
          </tr>
        </thead>
        <tbody>
          {proposal.calls.map((call) => {
            const join = joins.find(({ atS }) => atS === call.startS);
            return (
              <tr key={`${call.kind} ${call.startS}`} data-kind={call.kind}>
                <th scope="row">{at(call.startS)}</th>
                <td>{callWords(call.kind, call.count)}</td>
                <td>{result.pitch(call.pitchHz)}</td>
                <td>
                  {join === undefined ? result.nobody : nameOf({ rep: join.rep, leg: join.leg ?? null })}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </details>
  );
}
