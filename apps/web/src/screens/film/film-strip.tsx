import { clipsOfFilm, type FilmOfSession } from '@sedgeline/projections';
import { useWords } from '../../parts/words-context.tsx';
import { JUMP_S } from './film-keys.ts';
import { usePlayer, usePlayerNow } from './use-player.ts';

const share = (atS: number, lengthS: number): string => `${Math.round((10_000 * atS) / lengthS) / 100}%`;

/** The whole film as a ruler: where each rep lies, every mark, and where it stands. The slider goes anywhere. */
export function FilmStrip({
  film,
  reps,
  rep,
  lengthS,
}: {
  readonly film: FilmOfSession | null;
  readonly reps: readonly string[];
  readonly rep: string | null;
  readonly lengthS: number;
}) {
  const { player: words } = useWords().film;
  const player = usePlayer();
  const shownS = usePlayerNow((now) => now.shownS ?? 0);
  const goTo = (atS: number) => void player.seek(Math.min(Math.max(0, atS), lengthS));
  const clips = film === null ? [] : clipsOfFilm(film, reps);
  return (
    <div className="film-strip">
      <svg className="film-ruler" aria-hidden="true" viewBox="0 0 100 20" preserveAspectRatio="none">
        {clips.map(({ rep: of, inS, outS }) => (
          <rect
            key={of}
            className="film-clip"
            data-chosen={of === rep || undefined}
            x={(100 * inS) / lengthS}
            width={(100 * (outS - inS)) / lengthS}
            y="2"
            height="16"
          />
        ))}
        {film?.marks.map(({ mark, atS, what }) => (
          <path key={mark} className="film-tick" data-what={what} d={`M${(100 * atS) / lengthS} 4v12`} />
        ))}
      </svg>
      {clips.map(({ rep: of, inS }) => (
        <span
          key={of}
          className="film-clip-number figures"
          aria-hidden="true"
          style={{ left: share(inS, lengthS) }}
        >
          {reps.indexOf(of) + 1}
        </span>
      ))}
      <input
        type="range"
        className="film-slider"
        aria-label={words.seek}
        aria-valuetext={words.inWords(shownS)}
        min={0}
        max={lengthS}
        step="any"
        value={shownS}
        onChange={(event) => goTo(Number(event.target.value))}
        onKeyDown={(event) => {
          const toS = sliderKey(event.key, shownS, lengthS);
          if (toS === null) return;
          event.preventDefault();
          goTo(toS);
        }}
      />
    </div>
  );
}

/** So far the page keys go on the slider, seconds. */
const PAGE_S = 60;

/** Where a key of the slider leads; a browser's own steps would be too fine for a frame and too coarse for a film. */
function sliderKey(key: string, atS: number, lengthS: number): number | null {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowUp':
      return atS + JUMP_S;
    case 'ArrowLeft':
    case 'ArrowDown':
      return atS - JUMP_S;
    case 'PageUp':
      return atS + PAGE_S;
    case 'PageDown':
      return atS - PAGE_S;
    case 'Home':
      return 0;
    case 'End':
      return lengthS;
    default:
      return null;
  }
}
