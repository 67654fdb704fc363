import { Link } from 'wouter';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { useWords } from '../parts/words-context.tsx';
import { dismissKeepingNews, useKennel } from '../state/kennel-store.ts';

/** What came back from the second copy, or is gone from both, said until it is read; a clock that was set back, said while it is. */
export function KeepingNews() {
  const { keeping } = useWords();
  const restored = useKennel((s) => s.copies?.restored ?? 0);
  const missing = useKennel((s) => s.missing);
  const behindMinutes = useKennel((s) => s.behindMinutes);
  const read = <Button onClick={dismissKeepingNews}>{keeping.read}</Button>;
  return (
    <>
      {behindMinutes > 0 && <Notice tone="care">{keeping.behind(behindMinutes)}</Notice>}
      {restored > 0 && <Notice action={read}>{keeping.restored(restored)}</Notice>}
      {missing > 0 && (
        <Notice
          tone="care"
          action={
            <>
              <Link href="/setup" className="button button-plain">
                {keeping.toSetup}
              </Link>
              {read}
            </>
          }
        >
          {keeping.missing(missing)}
        </Notice>
      )}
    </>
  );
}
