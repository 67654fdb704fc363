import { useEffect, useState } from 'react';
import { useKennel } from './kennel-store.ts';

/**
 * What the record in use answers about something, asked again with every fact that comes; `waiting` before the first answer. `ask` is
 * asked when the record has been read, and is to be the same function each time.
 */
export function useRecordView<Of, View>(ask: (of: Of) => Promise<View>, of: Of): View | 'waiting' {
  const isReady = useKennel((s) => s.isReady);
  const facts = useKennel((s) => s.dogs?.facts ?? 0);
  const [view, setView] = useState<View | 'waiting'>('waiting');
  // biome-ignore lint/correctness/useExhaustiveDependencies: more facts may be another answer
  useEffect(() => {
    if (!isReady) return;
    let isLeft = false;
    void ask(of).then((found) => {
      if (!isLeft) setView(found);
    });
    return () => {
      isLeft = true;
    };
  }, [ask, of, isReady, facts]);
  return view;
}
