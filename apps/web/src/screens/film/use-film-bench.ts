import {
  type FilmBenchView,
  type FilmMark,
  type FilmOfSession,
  filmStart,
  latencyFact,
  placesOnFilm,
  type TapFact,
} from '@sedgeline/projections';
import type { FilmMarkName } from '@sedgeline/words';
import { useEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react';
import { useWords } from '../../parts/words-context.tsx';
import {
  type FilmSaid,
  heardFact,
  linkFact,
  markFact,
  moreOfFilm,
  unlinkFacts,
  unmarkFact,
} from './film-facts.ts';
import type { FilmPlayer } from './film-player.ts';
import { type Known, knownFilm } from './known-film.ts';
import type { MarkActs } from './rep-marks.tsx';
import { type FilmFile, useFilmFile } from './use-film-file.ts';

/** A second either side of a mark is played round and round (our judgement, 2026). */
const ROUND_S = 1;

export interface BenchDoors {
  readonly newId: () => string;
  readonly append: (facts: readonly TapFact[]) => Promise<unknown>;
}

/** What the bench has in hand: the file that is open, the film it is, the rep being marked; and everything that can be done. */
export function useFilmBench(view: FilmBenchView, firstRep: string | null, { newId, append }: BenchDoors) {
  const { film: words } = useWords();
  const { film: file, open, shut, stopHash } = useFilmFile(newId);
  const [player, setPlayer] = useState<FilmPlayer | null>(null);
  const [rep, setRep] = useState<string | null>(
    (view.reps.find((one) => one.rep === firstRep) ?? view.reps[0])?.rep ?? null,
  );
  const [shown, setShown] = useState<string | null>(null);
  const [made, setMade] = useState<readonly FilmMarkId[]>([]);
  const [lastAtS, setLastAtS] = useState<number | null>(null);
  const [told, setTold] = useState('');
  const said = useMemo(() => (file === null ? null : whatIsSaid(view, file)), [view, file]);
  const known = file === null ? null : knownOf(view, file);
  const film = file === null || said === null ? filmShown(view, shown) : filmOpen(view, known, said);
  useMoreOfFilm(known, said, append);
  const hasPicture = useSyncExternalStore(player?.subscribe ?? NEVER, () => player?.now.picture === 'there');
  const canMark = film !== null && rep !== null && hasPicture && known !== null && !WAITING.has(known.kind);

  const mark = async (what: FilmMarkName) => {
    if (!canMark || said === null || player === null) return;
    await player.stop();
    const frame = await player.frame();
    if (frame === null) return;
    const one = { mark: newId(), film: film.film, rep };
    setMade((last) => [...last, { ...one, what }]);
    setLastAtS(frame.atS);
    await append([...(isOnRecord(view, film) ? [] : [linkFact(said)]), markFact({ ...one, what }, frame)]);
    setTold(words.marks.made(what, frame.atS));
  };
  const undo = async () => {
    const last = made.at(-1);
    if (last === undefined) return;
    setMade(made.slice(0, -1));
    await append([unmarkFact(last, false)]);
    setTold(words.marks.undone(last.what));
  };
  const goTo = ({ atS }: FilmMark) => {
    setLastAtS(atS);
    void player?.stop();
    void player?.seek(atS);
  };
  const moveHere = async (one: FilmMark) => {
    const frame = await player?.frame();
    if (frame === null || frame === undefined) return;
    setLastAtS(frame.atS);
    await append([markFact(one, frame)]);
    setTold(words.marks.moved(one.what, frame.atS));
  };
  const loop = () => {
    if (player === null) return;
    if (player.now.loop !== null) return player.setLoop(null);
    const aboutS = lastAtS ?? player.now.shownS ?? 0;
    const endS = said?.lengthS ?? player.now.lengthS ?? Number.POSITIVE_INFINITY;
    player.setLoop({ fromS: Math.max(0, aboutS - ROUND_S), toS: Math.min(endS, aboutS + ROUND_S) });
  };
  const turnRep = (by: 1 | -1) => {
    const at = view.reps.findIndex((one) => one.rep === rep) + by;
    setRep(view.reps[at]?.rep ?? rep);
  };
  const markActs: MarkActs = {
    goTo: player === null ? null : goTo,
    moveHere: canMark ? (one) => void moveHere(one) : null,
    takeOff: (one) => {
      setMade((last) => last.filter(({ mark: id }) => id !== one.mark));
      void append([unmarkFact(one, false)]);
      setTold(words.marks.undone(one.what));
    },
    putBack: (one) => {
      void append([unmarkFact(one, true)]);
      setTold(words.marks.back(one.what));
    },
    heard:
      film === null || (file !== null && !canMark)
        ? null
        : (one) => {
            const linking = said === null || isOnRecord(view, film) ? [] : [linkFact(said)];
            void append([...linking, heardFact(newId(), film.film, one)]);
            setTold(words.marks.made('whistle', one.atS));
          },
    keep: (of, latencies) => {
      const legs = view.reps.find((one) => one.rep === of)?.legs;
      if (legs !== undefined) void append([latencyFact(of, legs, latencies)]);
    },
  };
  return {
    ...{ file, known, film, said, player, setPlayer, open, shut, stopHash },
    ...{ rep, setRep, setShown, canMark, canUndo: made.length > 0, told, markActs },
    ...{ mark, undo, loop, turnRep },
    /** The open file holds that film all the same: another copy of it. */
    sayItIs: (one: FilmOfSession) => said !== null && void append([linkFact({ ...said, film: one.film })]),
    link: (one: FilmOfSession, stands: boolean) => void append(unlinkFacts(one, stands)),
  };
}

type FilmMarkId = Pick<FilmMark, 'mark' | 'film' | 'rep' | 'what'>;

/** No player, no news. */
const NEVER = () => () => undefined;

/** Before a film is known for sure nothing is marked on it. */
const WAITING: ReadonlySet<Known['kind']> = new Set(['checking', 'taken-off']);

const isOnRecord = (view: FilmBenchView, film: FilmOfSession): boolean =>
  view.films.some((one) => one.film === film.film);

function knownOf(view: FilmBenchView, { file, own, wanted, hash }: FilmFile): Known {
  const opened = {
    name: file.name,
    bytes: file.size,
    contentHash: hash.kind === 'done' ? hash.contentHash : null,
    isHashOver: hash.kind !== 'working',
  };
  return knownFilm(view.films, opened, own, wanted);
}

function whatIsSaid(view: FilmBenchView, { file, own, index, takenAtMs, hash }: FilmFile): FilmSaid {
  const lengthS = typeof index === 'string' ? null : index.lengthS;
  const taps = view.reps.filter(({ fromMemory }) => !fromMemory).map(({ atMs }) => atMs);
  return {
    film: own,
    session: view.session,
    name: file.name,
    bytes: file.size,
    contentHash: hash.kind === 'done' ? hash.contentHash : null,
    lengthS,
    startsAtMs:
      lengthS === null ? null : filmStart({ takenAtMs, writtenAtMs: file.lastModified }, lengthS, taps),
  };
}

/** The film whose marks are shown while none is open. */
function filmShown(view: FilmBenchView, shown: string | null): FilmOfSession | null {
  const linked = view.films.filter(({ isLinked }) => isLinked);
  return (
    linked.find(({ film }) => film === shown) ??
    linked.find(({ marks }) => marks.length > 0) ??
    linked[0] ??
    null
  );
}

/** The film that the open file is: one on record, or what it would be with its first mark. */
function filmOpen(view: FilmBenchView, known: Known | null, said: FilmSaid): FilmOfSession {
  if (known !== null && 'film' in known) return known.film;
  const fresh = {
    ...said,
    orderKey: { ms: 0, counter: 0, device: '', id: said.film },
    ids: [said.film],
    files: [],
    isLinked: true,
    marks: [],
    takenOff: [],
  };
  return { ...fresh, places: placesOnFilm(fresh, view.reps), marked: [] };
}

/** Adds to a film on record what the open file tells of it: its hash once that is there, how long it is, when it began. */
function useMoreOfFilm(known: Known | null, said: FilmSaid | null, append: BenchDoors['append']): void {
  const added = useRef('');
  useEffect(() => {
    if (known === null || said === null || !('film' in known) || WAITING.has(known.kind)) return;
    const more = moreOfFilm(known.film, said);
    const what = JSON.stringify(more);
    if (more === null || what === added.current) return;
    added.current = what;
    void append([more]);
  }, [known, said, append]);
}

export type FilmBench = ReturnType<typeof useFilmBench>;
