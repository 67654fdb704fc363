import { useEffect, useState } from 'react';

/** What the worker answered, or that it has not, or could not. */
export type Answer<View> = { readonly view: View } | 'waiting' | 'failed';

/** Asks the worker once, and again whenever `ask` is another; the last answer stays until the next is there. */
export function useAnswer<View>(ask: () => Promise<View>): Answer<View> {
  const [answer, setAnswer] = useState<Answer<View>>('waiting');
  useEffect(() => {
    let isShown = true;
    ask().then(
      (view) => isShown && setAnswer({ view }),
      () => isShown && setAnswer('failed'),
    );
    return () => {
      isShown = false;
    };
  }, [ask]);
  return answer;
}
