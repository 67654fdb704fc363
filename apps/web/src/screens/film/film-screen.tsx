import { type FilmBenchView, heardWhistles } from '@sedgeline/projections';
import { useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';
import './film.css';
import './film-marks.css';
import './film-picture.css';
import { FilmSpeeds, FilmSteps } from './film-controls.tsx';
import { type FilmActs, pressFilmKey } from './film-keys.ts';
import { FilmFaults, FilmNotices, useIsDark } from './film-notices.tsx';
import { FilmStage } from './film-stage.tsx';
import { FilmStrip } from './film-strip.tsx';
import { captionsText, type FilmText } from './film-texts.ts';
import { FilmFileKey, FilmsPanel } from './films-panel.tsx';
import { HandOn } from './hand-on.tsx';
import { MarkKeys } from './mark-keys.tsx';
import { RepList } from './rep-list.tsx';
import { RepMarks } from './rep-marks.tsx';
import { type BenchDoors, type FilmBench, useFilmBench } from './use-film-bench.ts';
import type { FilmFile } from './use-film-file.ts';
import { PlayerContext, usePlayerNow } from './use-player.ts';

/** The film beside the reps: step, mark, and see what the marks come to. */
export function FilmScreen({
  view,
  firstRep,
  doors,
  onSave,
}: {
  readonly view: FilmBenchView;
  /** The rep to begin with; `null`, or one that is not there, for the first. */
  readonly firstRep: string | null;
  readonly doors: BenchDoors;
  readonly onSave: (text: FilmText) => void;
}) {
  const { film: words } = useWords();
  const bench = useFilmBench(view, firstRep, doors);
  const { file, film, rep, player } = bench;
  const at = view.reps.findIndex((one) => one.rep === rep);
  const inHand = view.reps[at];
  return (
    <div className="film">
      <Link className="dog-back not-printed" href={`/back/${encodeURIComponent(view.session)}`}>
        {words.toSession}
      </Link>
      <h1>{words.title(view.dogName, view.openedAtMs)}</h1>
      {view.reps.length === 0 && <p>{words.noReps}</p>}
      {file === null ? (
        <div className="film-opening">
          <p>{words.lead}</p>
          <FilmFileKey look="main" onOpen={(one) => bench.open(one, null)}>
            {words.open}
          </FilmFileKey>
        </div>
      ) : (
        <Bench key={file.url} view={view} bench={bench} file={file} />
      )}
      <div className="film-beside">
        {inHand !== undefined && film !== null && (
          <RepMarks
            film={film}
            rep={inHand}
            number={at + 1}
            heard={heardWhistles(film, view.sounds).filter((one) => one.rep === rep)}
            acts={bench.markActs}
          />
        )}
        {view.reps.length > 0 && (
          <RepList
            reps={view.reps}
            film={film}
            chosen={rep}
            onChoose={bench.setRep}
            onGoTo={
              player === null
                ? null
                : (one, atS) => {
                    bench.setRep(one);
                    void player.seek(atS);
                  }
            }
          />
        )}
      </div>
      <div className="film-below">
        {film !== null && <HandOn view={view} film={film} onSave={onSave} />}
        <FilmsPanel
          films={view.films}
          shown={film?.film ?? null}
          onOpen={bench.open}
          onShow={file === null ? bench.setShown : null}
          onLink={bench.link}
        />
      </div>
    </div>
  );
}

/** The film that is open, with all its keys. The letters work while the keyboard stands on it. */
function Bench({
  view,
  bench,
  file,
}: {
  readonly view: FilmBenchView;
  readonly bench: FilmBench;
  readonly file: FilmFile;
}) {
  const words = useWords();
  const { film: said, ask } = words;
  const { film, rep, player } = bench;
  const section = useRef<HTMLElement>(null);
  const [areCaptionsOn, setCaptionsOn] = useState(false);
  const acts: FilmActs = {
    step: (by, isHeld) => void player?.step(by, isHeld),
    jump: (byS) => void player?.seek(Math.max(0, (player.now.shownS ?? 0) + byS)),
    toggle: () => player?.toggle(),
    mark: (what) => void bench.mark(what),
    undo: () => void bench.undo(),
    loop: bench.loop,
    turnRep: bench.turnRep,
  };
  useEffect(() => section.current?.focus(), []);
  useEffect(() => {
    const at = section.current;
    const listen = (event: KeyboardEvent) => pressFilmKey(event, acts);
    at?.addEventListener('keydown', listen);
    return () => at?.removeEventListener('keydown', listen);
  });
  const hasMarks = film !== null && film.marks.length > 0;
  const at = view.reps.findIndex((one) => one.rep === rep);
  const inHand = view.reps[at];
  return (
    <section ref={section} className="film-bench" tabIndex={-1} aria-label={said.player.label}>
      <FilmStage
        file={file}
        captions={hasMarks ? captionsText(view, film, words).text : null}
        areCaptionsOn={areCaptionsOn}
        onPlayer={bench.setPlayer}
      />
      {player === null ? (
        <p role="status">{said.player.reading}</p>
      ) : (
        <PlayerContext value={player}>
          <FilmFaults file={file} onOther={(one) => bench.open(one, null)} />
          <Keys bench={bench} acts={acts} view={view} />
        </PlayerContext>
      )}
      {inHand !== undefined && (
        <div className="film-in-hand">
          <Button
            look="quiet"
            disabled={at === 0}
            onClick={() => bench.turnRep(-1)}
            aria-label={said.reps.before}
          >
            ↑
          </Button>
          <p>
            <b>{said.reps.rep(at + 1, view.reps.length)}</b> {ask.rep(inHand.legs)}
          </p>
          <Button
            look="quiet"
            disabled={at === view.reps.length - 1}
            onClick={() => bench.turnRep(1)}
            aria-label={said.reps.next}
          >
            ↓
          </Button>
        </div>
      )}
      <MarkKeys canMark={bench.canMark} canUndo={bench.canUndo} onMark={acts.mark} onUndo={acts.undo} />
      <p className="film-told" role="status">
        {bench.told}
      </p>
      {player !== null && (
        <PlayerContext value={player}>
          <FilmSpeeds
            acts={acts}
            hasSound={typeof file.index === 'string' || file.index.hasSound}
            captions={hasMarks ? { isOn: areCaptionsOn, turn: () => setCaptionsOn(!areCaptionsOn) } : null}
          />
        </PlayerContext>
      )}
      {player === null ? (
        <BenchFoot bench={bench} file={file} isDark={false} />
      ) : (
        <PlayerContext value={player}>
          <ShownFoot bench={bench} file={file} />
        </PlayerContext>
      )}
      <p className="film-keys-hint soft">{said.marks.keysHint}</p>
    </section>
  );
}

interface BenchFootProps {
  readonly bench: FilmBench;
  readonly file: FilmFile;
}

function ShownFoot(props: BenchFootProps) {
  return <BenchFoot {...props} isDark={useIsDark()} />;
}

/** Which film it is, and the ways from it. Of one that shows no picture only the way away: its fault offers another. */
function BenchFoot({ bench, file, isDark }: BenchFootProps & { readonly isDark: boolean }) {
  const { film: said } = useWords();
  return (
    <>
      {!isDark && <FilmNotices bench={bench} file={file} />}
      <div className="film-hand-on-keys">
        {!isDark && <FilmFileKey onOpen={(one) => bench.open(one, null)}>{said.other}</FilmFileKey>}
        <Button look="quiet" onClick={bench.shut}>
          {said.shut}
        </Button>
      </div>
    </>
  );
}

/** What moves the film, once there is a picture to be moved. */
function Keys({
  view,
  bench,
  acts,
}: {
  readonly view: FilmBenchView;
  readonly bench: FilmBench;
  readonly acts: FilmActs;
}) {
  const picture = usePlayerNow((now) => now.picture);
  const browserLengthS = usePlayerNow((now) => now.lengthS);
  const lengthS = bench.said?.lengthS ?? browserLengthS;
  if (picture !== 'there') return null;
  return (
    <>
      {lengthS !== null && lengthS > 0 && (
        <FilmStrip
          film={bench.film}
          reps={view.reps.map(({ rep }) => rep)}
          rep={bench.rep}
          lengthS={lengthS}
        />
      )}
      <FilmSteps acts={acts} lengthS={lengthS} />
    </>
  );
}
