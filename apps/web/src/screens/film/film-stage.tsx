import { useEffect, useRef } from 'react';
import { useWords } from '../../parts/words-context.tsx';
import { FilmPlayer } from './film-player.ts';
import type { FilmFile } from './use-film-file.ts';

/** The picture itself. Its player is handed up once the film's index was looked for. */
export function FilmStage({
  file,
  captions,
  areCaptionsOn,
  onPlayer,
}: {
  readonly file: FilmFile;
  /** WebVTT of the marks; `null` where there is none. */
  readonly captions: string | null;
  readonly areCaptionsOn: boolean;
  readonly onPlayer: (player: FilmPlayer | null) => void;
}) {
  const { player: words } = useWords().film;
  const video = useRef<HTMLVideoElement>(null);
  const track = useRef<HTMLTrackElement>(null);
  const { index, url } = file;
  useEffect(() => {
    if (video.current === null || index === 'reading') return;
    const player = new FilmPlayer(video.current, typeof index === 'string' ? null : index);
    onPlayer(player);
    return () => {
      player.leave();
      onPlayer(null);
    };
  }, [index, onPlayer]);
  useEffect(() => {
    if (track.current === null || captions === null) return;
    const address = URL.createObjectURL(new Blob([captions], { type: 'text/vtt' }));
    track.current.src = address;
    return () => URL.revokeObjectURL(address);
  }, [captions]);
  useEffect(() => {
    if (track.current !== null) track.current.track.mode = areCaptionsOn ? 'showing' : 'hidden';
  }, [areCaptionsOn]);
  return (
    <video
      ref={video}
      className="film-picture"
      src={url}
      playsInline
      preload="auto"
      aria-label={words.pictureLabel}
    >
      <track ref={track} kind="captions" srcLang="en" label={words.captions} />
    </video>
  );
}
