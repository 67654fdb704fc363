import type { ReactNode } from 'react';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { type FilmActs, JUMP_S, LOOP_LETTER } from './film-keys.ts';
import { usePlayer, usePlayerNow } from './use-player.ts';

const RATES = [1, 0.5, 0.25, 0.125] as const;

/** Where the film stands, and the keys that move it. */
export function FilmSteps({ acts, lengthS }: { readonly acts: FilmActs; readonly lengthS: number | null }) {
  const { player: words } = useWords().film;
  const isPlaying = usePlayerNow((now) => now.isPlaying);
  return (
    <div className="film-controls">
      <p className="film-moment figures">
        <Moment /> {lengthS !== null && <span className="soft">{words.of(lengthS)}</span>}
      </p>
      <div className="film-steps">
        <StepKey label={words.back} name={words.jump} letter="←" onPress={() => acts.jump(-JUMP_S)}>
          <path d="M20 5 12 12l8 7zM11 5 3 12l8 7z" />
        </StepKey>
        <StepKey label={words.stepBack} name={words.frame} letter="," onPress={() => acts.step(-1, false)}>
          <path d="M16 5 8 12l8 7zM5 5h2v14H5z" />
        </StepKey>
        <StepKey
          label={isPlaying ? words.pause : words.play}
          name={isPlaying ? words.pause : words.play}
          letter={words.space}
          isMain
          onPress={acts.toggle}
        >
          <path d={isPlaying ? 'M6 4h4v16H6zM14 4h4v16h-4z' : 'M6 4 20 12 6 20z'} />
        </StepKey>
        <StepKey label={words.stepOn} name={words.frame} letter="." onPress={() => acts.step(1, false)}>
          <path d="M8 5l8 7-8 7zM17 5h2v14h-2z" />
        </StepKey>
        <StepKey label={words.on} name={words.jump} letter="→" onPress={() => acts.jump(JUMP_S)}>
          <path d="M4 5l8 7-8 7zM13 5l8 7-8 7z" />
        </StepKey>
      </div>
    </div>
  );
}

/** How the film is played: its speed, round and round, with sound, with the marks upon it. */
export function FilmSpeeds({
  acts,
  hasSound,
  captions,
}: {
  readonly acts: FilmActs;
  readonly hasSound: boolean;
  /** Shows the marks on the picture; `null` where there is none. */
  readonly captions: { readonly isOn: boolean; readonly turn: () => void } | null;
}) {
  const { player: words } = useWords().film;
  const player = usePlayer();
  const rate = usePlayerNow((now) => now.rate);
  const isMuted = usePlayerNow((now) => now.isMuted);
  const isLooped = usePlayerNow((now) => now.loop !== null);
  return (
    <fieldset className="film-speeds" aria-label={words.speed}>
      {RATES.map((one) => (
        <Button
          key={one}
          look="quiet"
          aria-pressed={one === rate}
          aria-label={words.rateInWords(one)}
          onClick={() => player.setRate(one)}
        >
          {words.rate(one)}
        </Button>
      ))}
      <Button look="quiet" aria-pressed={isLooped} onClick={acts.loop} aria-keyshortcuts={LOOP_LETTER}>
        {words.loop} <kbd>{LOOP_LETTER}</kbd>
      </Button>
      {hasSound && (
        <Button look="quiet" aria-pressed={!isMuted} onClick={() => player.setMuted(!isMuted)}>
          {words.sound}
        </Button>
      )}
      {captions !== null && (
        <Button look="quiet" aria-pressed={captions.isOn} onClick={captions.turn}>
          {words.captions}
        </Button>
      )}
    </fieldset>
  );
}

function Moment() {
  const { player: words } = useWords().film;
  const shownS = usePlayerNow((now) => now.shownS);
  return <b data-shown={shownS ?? undefined}>{words.moment(shownS ?? 0)}</b>;
}

function StepKey({
  label,
  name,
  letter,
  isMain = false,
  onPress,
  children,
}: {
  readonly label: string;
  /** What stands on the key. */
  readonly name: string;
  readonly letter: string;
  readonly isMain?: boolean;
  readonly onPress: () => void;
  readonly children: ReactNode;
}) {
  return (
    <Button look={isMain ? 'main' : 'plain'} className="film-step" aria-label={label} onClick={onPress}>
      <svg viewBox="0 0 24 24" width="22" height="22" aria-hidden="true">
        {children}
      </svg>
      {name} <kbd>{letter}</kbd>
    </Button>
  );
}
