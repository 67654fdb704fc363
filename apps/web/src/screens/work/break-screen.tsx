import type { WorkView } from '@sedgeline/projections';
import { useEffect, useRef } from 'react';
import { announce } from '../../parts/announcer.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { pulse, soundAfter } from '../../state/signals.ts';
import { useNow } from './use-now.ts';
import type { WorkTaps } from './use-work-taps.ts';

interface BreakScreenProps {
  readonly running: NonNullable<WorkView['breakRunning']>;
  readonly taps: WorkTaps;
}

/** A break that counts down; its end is felt and heard, and nothing goes on before the handler says so. */
export function BreakScreen({ running, taps }: BreakScreenProps) {
  const { work } = useWords();
  const nowMs = useNow();
  const totalS = running.minutes * 60;
  const leftS = totalS - (nowMs - running.startedAtMs) / 1000;
  const isOver = leftS <= 0;
  const wasRunning = useRef(!isOver);
  const endsAtMs = running.startedAtMs + totalS * 1000;
  useEffect(() => {
    const toGoS = (endsAtMs - Date.now()) / 1000;
    return toGoS > 0 ? soundAfter(toGoS) : undefined;
  }, [endsAtMs]);
  useEffect(() => {
    if (!isOver || !wasRunning.current) return;
    wasRunning.current = false;
    pulse('break-over');
    announce(work.said.breakOver);
  }, [isOver, work]);
  const share = Math.min(1, Math.max(0, leftS / totalS));
  return (
    <section className="work-break" aria-label={work.break.title}>
      <h2>{work.break.title}</h2>
      <svg className="work-break-dial" viewBox="0 0 220 220" aria-hidden="true">
        <path d={ring(1)} className="work-break-track" />
        {share > 0 && <path d={ring(share)} className="work-break-left" />}
      </svg>
      <p className="work-break-time" role="timer" aria-label={work.break.leftInWords(leftS)}>
        {work.break.left(leftS)}
      </p>
      <p className="work-break-say">{isOver ? work.break.over : work.break.say}</p>
      <p className="work-break-note">{work.pocket.lockedBreak}</p>
      <button type="button" className="work-wide" aria-keyshortcuts="Space" onClick={taps.breakOver}>
        {work.break.backToWork}
      </button>
    </section>
  );
}

/** An open ring from the top, clockwise, over a share of the turn. */
function ring(share: number): string {
  const angle = Math.min(share, 0.9999) * 2 * Math.PI;
  const x = 110 + 96 * Math.sin(angle);
  const y = 110 - 96 * Math.cos(angle);
  return `M110 14 A96 96 0 ${share > 0.5 ? 1 : 0} 1 ${x.toFixed(2)} ${y.toFixed(2)}`;
}
