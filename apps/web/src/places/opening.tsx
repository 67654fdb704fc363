import { useWords } from '../parts/words-context.tsx';

/** Said only where reading takes long enough to wonder: a large record with no checkpoint beside it. */
export function Opening() {
  const { shell } = useWords();
  return (
    <p className="work-opening" role="status">
      {shell.opening}
    </p>
  );
}
