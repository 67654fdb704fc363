import { useWords } from '../../parts/words-context.tsx';
import { notSavedAsLines, retrySaving } from '../../state/kennel.ts';
import { useKennel } from '../../state/kennel-store.ts';
import { saveFile } from '../../state/save-file.ts';

/** Says that the device would not save, what became of the taps, and offers them as a file. */
export function NotSavedBar() {
  const { work, failures } = useWords();
  const notSaved = useKennel((s) => s.notSaved);
  if (notSaved === null) return null;
  const save = async () =>
    saveFile('sedgeline-not-saved.jsonl', await notSavedAsLines(), 'application/x-ndjson');
  return (
    <section className="work-not-saved" role="alert" data-code={notSaved.failure.code}>
      <p>
        <strong>{work.notSaved.title(notSaved.count)}</strong> {failures.store(notSaved.failure.code).what}{' '}
        {work.notSaved.kept}
      </p>
      <div className="work-panel-keys">
        <button type="button" onClick={() => void retrySaving()}>
          {work.notSaved.retry}
        </button>
        {notSaved.count > 0 && (
          <button type="button" onClick={() => void save()}>
            {work.notSaved.file}
          </button>
        )}
      </div>
    </section>
  );
}
