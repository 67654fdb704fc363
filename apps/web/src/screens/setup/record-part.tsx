import type { BroughtBack } from '@sedgeline/words';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { BringBack } from './bring-back.tsx';

/** Whether the browser has promised to keep the record: `unknown` where it does not say, `revoked` where it no longer does. */
export type Keeping = 'kept' | 'not-kept' | 'revoked' | 'refused' | 'unknown';

export interface RecordPartProps {
  readonly facts: number;
  readonly unknownFacts: number;
  readonly keeping: Keeping;
  /** Room used and room there is, bytes; `null` where the browser does not say. */
  readonly room: { readonly usedBytes: number; readonly roomBytes: number } | null;
  /** What was last written, to be said under the key; `null` before. */
  readonly exported: { readonly facts: number; readonly name: string } | null;
  /** Whether there is a second copy; `null` where that is not known yet, or there need be none. */
  readonly hasCopy: boolean | null;
  /** What the file that was brought back held; `null` before. */
  readonly broughtBack: BroughtBack | null;
  readonly onExport: () => void;
  readonly onBringBack: (file: File) => void;
  readonly onAskToKeep: () => void;
}

/** The record: how much there is, whether it will be kept, and out with it in one tap. */
export function RecordPart(props: RecordPartProps) {
  const { facts, unknownFacts, keeping, room, hasCopy, exported, onExport, onAskToKeep } = props;
  const { setup, keeping: words } = useWords();
  const { record } = setup;
  const said = {
    kept: record.kept,
    'not-kept': record.notKept,
    revoked: words.revoked,
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
      {hasCopy !== null && <p>{hasCopy ? words.copy : words.noCopy}</p>}
      {(keeping === 'not-kept' || keeping === 'revoked') && (
        <Button onClick={onAskToKeep}>{record.askToKeep}</Button>
      )}
      <Button look="main" onClick={onExport} disabled={facts === 0}>
        {record.export}
      </Button>
      <p className="soft setup-note" role="status">
        {exported ? record.exported(exported.facts, exported.name) : record.exportHint}
      </p>
      <BringBack broughtBack={props.broughtBack} onBringBack={props.onBringBack} />
    </section>
  );
}
