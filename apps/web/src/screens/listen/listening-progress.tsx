import type { FileListening } from '../../devices/listen-to-file.ts';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';

interface ListeningProgressProps {
  readonly name: string;
  readonly state: Extract<FileListening, { readonly kind: 'working' }>;
  readonly onCancel: () => void;
}

/** How far the listening to a file is, what is left of it, and the way out. */
export function ListeningProgress({ name, state, onCancel }: ListeningProgressProps) {
  const { file } = useWords().listenScreen;
  const { share, leftS } = state;
  return (
    <section className="listen-part" aria-label={file.working(name)}>
      <h2 className="listen-name">{file.working(name)}</h2>
      <progress aria-label={file.working(name)} {...(share === null ? {} : { value: share })} max={1} />
      <p className="figures" role="status">
        {share === null ? file.begun : file.share(share)}
        {leftS !== null && `, ${file.left(leftS)}`}
      </p>
      <Button onClick={onCancel}>{file.cancel}</Button>
    </section>
  );
}
