import { createContext, use, useSyncExternalStore } from 'react';
import type { FilmPlayer, PlayerNow } from './film-player.ts';

/** The player of the film that is open. */
export const PlayerContext = createContext<FilmPlayer | null>(null);

/** The player in use. Throws outside a film that is open: that is the caller's bug. */
export function usePlayer(): FilmPlayer {
  const player = use(PlayerContext);
  if (player === null) throw new Error('usePlayer: expected a film to be open');
  return player;
}

/** One slice of what the player shows: the screen draws again when it changes, and not with every frame. */
export function usePlayerNow<Slice>(slice: (now: PlayerNow) => Slice): Slice {
  const player = usePlayer();
  return useSyncExternalStore(player.subscribe, () => slice(player.now));
}
