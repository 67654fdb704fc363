import type { AskedLeg, LegRecord, Reward } from '@sedgeline/projections';
import { wasWhistleBlown } from '../../parts/was-whistle-blown.ts';
import { useWords } from '../../parts/words-context.tsx';
import { useSettings } from '../../state/settings.ts';
import type { WorkScreen } from '../../workers/kennel-calls.ts';
import { keepFocus } from './keep-focus.ts';
import type { WorkTaps } from './use-work-taps.ts';

const REWARDS: readonly Reward[] = ['marker', 'food', 'play', 'retrieve', 'praise'];
const SIDES = ['earlier', 'later'] as const;

/** The rep of which something may be said: the chain in hand, else the last one. */
export interface SpokenRep {
  readonly rep: string;
  readonly number: number;
  readonly legs: readonly LegRecord[];
  readonly reward: readonly Reward[];
  readonly gotItAnyway: boolean;
  /** By how far the stop was blown later than planned, metres; `null` where no whistle was part of it. */
  readonly blewByM: number | null;
}

/** What may still be said of the rep in hand or of the last one; `null` before the first. */
export function spokenRep({ view, chosen }: Pick<WorkScreen, 'view' | 'chosen'>): SpokenRep | null {
  const { inHand, done } = view;
  const last = done.at(-1);
  if (inHand !== null) {
    const { rep, graded: legs, reward, gotItAnyway } = inHand;
    const asked = stopM(legs) ?? stopM(chosen?.rep.legs ?? inHand.chain);
    const isBlown = wasWhistleBlown(legs, inHand.chain);
    const blewByM = isBlown ? blownBy(legs, stopM(inHand.chain), asked) : null;
    return { rep, number: view.repNumber, legs, reward: reward ?? [], gotItAnyway, blewByM };
  }
  if (last === undefined) return null;
  const { rep, legs, reward, gotItAnyway } = last;
  const blewByM = blownBy(legs, stopM(legs), stopM(legs));
  return { rep, number: done.length, legs, reward: reward ?? [], gotItAnyway, blewByM };
}

/** Where the stop is asked, metres from the send. */
const stopM = (legs: readonly AskedLeg[]) => legs.find(({ skill }) => skill === 'stop')?.ask.distanceM;

function blownBy(legs: readonly LegRecord[], askedM: number | undefined, atM: number | undefined) {
  if (atM === undefined) return null;
  const planned = legs.find(({ skill }) => skill === 'stop')?.planned;
  return atM - (planned?.distanceM ?? askedM ?? atM);
}

interface LastRepRowProps {
  readonly spoken: SpokenRep;
  readonly taps: WorkTaps;
}

/** One tap each, for what was not as planned or is worth keeping: when the whistle came, what it paid, that a miss paid. */
export function LastRepRow({ spoken, taps }: LastRepRowProps) {
  const { work } = useWords();
  const keepReward = useSettings((s) => s.keepReward);
  const { rep, legs, reward, gotItAnyway, blewByM } = spoken;
  const isMiss = legs.some(({ grade }) => grade === 'missed');
  if (blewByM === null && !keepReward && !isMiss) return null;
  const toggled = (one: Reward) =>
    reward.includes(one) ? reward.filter((other) => other !== one) : [...reward, one];
  return (
    <fieldset className="work-last">
      <legend>{work.last.title(spoken.number)}</legend>
      {blewByM !== null &&
        SIDES.map((when) => {
          const isSaid = when === 'later' ? blewByM > 0 : blewByM < 0;
          return (
            <button
              key={when}
              type="button"
              data-blew={when}
              aria-pressed={isSaid}
              aria-keyshortcuts={when === 'later' ? 'L' : 'K'}
              onMouseDown={keepFocus}
              onClick={() => taps.blew(when)}
            >
              {isSaid ? work.last.blewBy(blewByM) : work.last.blew[when]}
            </button>
          );
        })}
      {isMiss && (
        <button
          type="button"
          data-got-it
          aria-pressed={gotItAnyway}
          aria-keyshortcuts="G"
          onMouseDown={keepFocus}
          onClick={() => taps.gotIt(rep, !gotItAnyway)}
        >
          {work.last.gotIt}
        </button>
      )}
      {keepReward && (
        <div className="work-last-paid">
          {REWARDS.map((one) => (
            <button
              key={one}
              type="button"
              data-reward={one}
              aria-pressed={reward.includes(one)}
              onMouseDown={keepFocus}
              onClick={() => taps.reward(rep, toggled(one))}
            >
              {work.last.rewards(one)}
            </button>
          ))}
        </div>
      )}
    </fieldset>
  );
}
