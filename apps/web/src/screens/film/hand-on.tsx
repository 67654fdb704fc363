import type { FilmBenchView, FilmOfSession } from '@sedgeline/projections';
import { useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { captionsText, chaptersText, clipsText, type FilmText, summaryText } from './film-texts.ts';

/** What can be handed on from the marks of a film: chapters, captions, a clip list, and the session in plain words. */
export function HandOn({
  view,
  film,
  onSave,
}: {
  readonly view: FilmBenchView;
  readonly film: FilmOfSession;
  readonly onSave: (text: FilmText) => void;
}) {
  const words = useWords();
  const { exports: said } = words.film;
  const [told, setTold] = useState('');
  const summary = summaryText(view, film, words);
  const save = (text: FilmText) => {
    onSave(text);
    setTold(said.saved(text.name));
  };
  const copy = () =>
    void navigator.clipboard.writeText(summary.text).then(
      () => setTold(said.copied),
      () => setTold(said.notCopied),
    );
  return (
    <section className="film-hand-on" aria-labelledby="film-hand-on-title">
      <h2 id="film-hand-on-title">{said.title}</h2>
      {film.marked.length === 0 ? (
        <p>{said.none}</p>
      ) : (
        <>
          <p>{said.lead(film.name)}</p>
          <div className="film-hand-on-keys">
            <Button onClick={() => save(chaptersText(view, film, words))}>{said.chapters}</Button>
            <Button onClick={() => save(captionsText(view, film, words))}>{said.captions}</Button>
            <Button onClick={() => save(clipsText(view, film, words))}>{said.clips}</Button>
          </div>
          <details className="film-summary">
            <summary>{said.summary}</summary>
            {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a text that scrolls must be reached by the keyboard */}
            <pre tabIndex={0}>{summary.text}</pre>
            <div className="film-hand-on-keys">
              <Button onClick={copy}>{said.copy}</Button>
              <Button onClick={() => save(summary)}>{said.save}</Button>
            </div>
          </details>
        </>
      )}
      <p role="status">{told}</p>
    </section>
  );
}
