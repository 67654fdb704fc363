import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { filmFaults } from './film-faults.ts';
import { FilmFileKey } from './films-panel.tsx';
import type { Known } from './known-film.ts';
import type { FilmBench } from './use-film-bench.ts';
import type { FilmFile } from './use-film-file.ts';
import { usePlayer, usePlayerNow } from './use-player.ts';

/** What is to be told of the file that is open: which film it is, how far its fingerprint is, and what is wrong with it. */
export function FilmNotices({ bench, file }: { readonly bench: FilmBench; readonly file: FilmFile }) {
  const { film: words } = useWords();
  const { known, stopHash, link, sayItIs } = bench;
  const { hash } = file;
  const tone = known?.kind === 'another' || known?.kind === 'taken-off' ? 'care' : 'plain';
  return (
    <div className="film-notices">
      {known !== null && (
        <Notice
          tone={tone}
          action={
            known.kind === 'taken-off' ? (
              <Button onClick={() => link(known.film, true)}>{words.films.bringBack(known.film.name)}</Button>
            ) : (
              known.kind === 'another' &&
              hash.kind !== 'working' && (
                <Button onClick={() => sayItIs(known.wanted)}>{words.known.same(known.wanted.name)}</Button>
              )
            )
          }
        >
          <span data-known={known.kind}>
            <KnownSaid known={known} name={file.file.name} />
          </span>
        </Notice>
      )}
      {hash.kind === 'working' && (
        <div className="film-hash">
          <label>
            {words.hash.progress(hash.share, hash.leftS)}
            <progress max={1} value={hash.share} />
          </label>
          <Button look="quiet" onClick={stopHash}>
            {words.hash.stop}
          </Button>
        </div>
      )}
      {hash.kind === 'stopped' && <Notice>{words.fault('no-hash')}</Notice>}
      {hash.kind === 'failed' && <Notice tone="care">{words.fault('not-read')}</Notice>}
    </div>
  );
}

function KnownSaid({ known, name }: { readonly known: Known; readonly name: string }) {
  const { known: words } = useWords().film;
  switch (known.kind) {
    case 'own':
      return words.own(known.film.name);
    case 'known':
      return words.known(known.film.name);
    case 'renamed':
      return words.renamed(name, known.film.name);
    case 'by-name':
      return words.byName(known.film.name);
    case 'checking':
      return words.checking(known.film.name);
    case 'taken-off':
      return words.takenOff(known.film.name);
    case 'another':
      return words.another(known.wanted.name, known.wanted.bytes, name);
    case 'fresh':
      return words.fresh;
  }
}

/** Whether the film that is open shows no picture: nothing of it can be marked. */
export const useIsDark = () => usePlayerNow((now) => now.picture === 'none');

/** What is wrong with the picture, and the way on: another film, where this one shows none. */
export function FilmFaults({
  file,
  onOther,
}: {
  readonly file: FilmFile;
  readonly onOther: (file: File) => void;
}) {
  const { film: words } = useWords();
  const player = usePlayer();
  const isDark = useIsDark();
  const picture = usePlayerNow((now) => now.picture);
  const brokenAtS = usePlayerNow((now) => now.brokenAtS);
  const saysS = usePlayerNow((now) => now.lengthS);
  const { index } = file;
  const coding = typeof index === 'string' ? null : index.coding;
  const endS = typeof index === 'string' ? 0 : index.lengthS;
  return filmFaults(index, { picture, brokenAtS, lengthS: saysS }).map((fault) => (
    <Notice
      key={fault}
      tone={fault === 'no-sound' || fault === 'no-index' ? 'plain' : 'care'}
      action={
        isDark ? (
          <FilmFileKey onOpen={onOther}>{words.other}</FilmFileKey>
        ) : (
          fault === 'breaks-off' && <Button onClick={() => player.goOn()}>{words.again}</Button>
        )
      }
    >
      <span data-fault={fault}>
        {words.fault(fault, { coding, atS: brokenAtS ?? endS, saysS: saysS ?? 0 })}
      </span>
    </Notice>
  ));
}
