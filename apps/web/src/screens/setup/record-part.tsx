import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** Whether the browser has promised to keep the record: `unknown` where it does not say. */
export type Keeping = 'kept' | 'not-kept' | 'refused' | 'unknown';

export interface RecordPartProps {
  readonly facts: number;
  readonly unknownFacts: number;
  readonly keeping: Keeping;
  /** Room used and room there is, bytes; `null` where the browser does not say. */
  readonly room: { readonly usedBytes: number; readonly roomBytes: number } | null;
  /** What was last written, to be said under the key; `null` before. */
  readonly exported: { readonly facts: number; readonly name: string } | null;
  readonly onExport: () => void;
  readonly onAskToKeep: () => void;
}

/** The record: how much there is, whether it will be kept, and out with it in one tap. */
export function RecordPart(props: RecordPartProps) {
  const { facts, unknownFacts, keeping, room, exported, onExport, onAskToKeep } = props;
  const { record } = useWords().setup;
  const said = {
    kept: record.kept,
    'not-kept': record.notKept,
    refused: record.refused,
    unknown: record.keptUnknown,
  }[keeping];
  return (
    <section className="setup-part" aria-labelledby="record-title">
      <h2 id="record-title">{record.title}</h2>
      <p className="figures">
        {record.counted(facts)} {room && record.used(room.usedBytes, room.roomBytes)}
      </p>
      {unknownFacts > 0 && <p>{record.unknown(unknownFacts)}</p>}
      <p>{said}</p>
      {keeping === 'not-kept' && <Button onClick={onAskToKeep}>{record.askToKeep}</Button>}
      <Button look="main" onClick={onExport} disabled={facts === 0}>
        {record.export}
      </Button>
      <p className="soft setup-note" role="status">
        {exported ? record.exported(exported.facts, exported.name) : record.exportHint}
      </p>
    </section>
  );
}
