import type { SoundCall } from '@sedgeline/engine/sound';
import type { SoundJoined } from '@sedgeline/journal';
import type { JoinProposal } from '@sedgeline/projections';
import { useWords } from '../../parts/words-context.tsx';

interface TimeLineProps {
  readonly proposal: JoinProposal;
  readonly lengthS: number;
  readonly joins: SoundJoined['joins'];
  /** Start of the blast that is asked about. */
  readonly askedS: number | null;
}

/** Units of the drawing: a second is one across; what is heard stands above, the reps below. */
const LANES = { heard: [6, 34], rep: [70, 96], foot: 104 } as const;
/** A minute is this wide at least, so that blasts can be told apart: a long sound is pushed sideways. */
const MINUTE_PX = 44;
/** A pip is drawn no narrower than this share of the whole, and a click too. */
const LEAST_SHARE = 0.003;

/** What was heard over the reps by time: a blast as a bar, a pip as a short one, a click as a dot, a join as a line down to its rep. */
export function TimeLine({ proposal, lengthS, joins, askedS }: TimeLineProps) {
  const { listenScreen } = useWords();
  const { calls, reps } = proposal;
  const share = (s: number) => `${(100 * Math.min(lengthS, Math.max(0, s))) / lengthS}%`;
  const within = reps.filter(({ fromS, toS }) => toS >= 0 && fromS <= lengthS);
  const middle = new Map(within.map((rep) => [rep.rep, (Math.max(0, rep.fromS) + rep.toS) / 2]));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what is pushed sideways must be within reach of the keyboard
    <section className="listen-line" aria-label={listenScreen.result.line} tabIndex={0}>
      <div className="listen-line-width" style={{ minWidth: `${Math.ceil((lengthS / 60) * MINUTE_PX)}px` }}>
        <svg
          viewBox={`0 0 ${lengthS} ${LANES.foot}`}
          preserveAspectRatio="none"
          role="img"
          aria-label={listenScreen.result.line}
        >
          <path
            className="listen-ground"
            d={`M0 ${LANES.rep[1]}H${lengthS}M0 ${LANES.heard[1]}H${lengthS}`}
          />
          {joins.map(({ rep, atS }) => (
            <path
              key={`${rep} ${atS}`}
              className="listen-join"
              d={`M${atS} ${LANES.heard[1]}L${middle.get(rep) ?? atS} ${LANES.rep[0]}`}
            />
          ))}
          {calls.map((call) => (
            <CallBar
              key={`${call.kind} ${call.startS}`}
              call={call}
              lengthS={lengthS}
              isAsked={call.startS === askedS}
            />
          ))}
          {within.map(({ rep, fromS, toS }) => (
            <rect
              key={rep}
              className="listen-rep"
              x={Math.max(0, fromS)}
              width={Math.max(lengthS * LEAST_SHARE * 2, Math.min(lengthS, toS) - Math.max(0, fromS))}
              y={LANES.rep[0]}
              height={LANES.rep[1] - LANES.rep[0]}
            />
          ))}
        </svg>
        <div className="listen-numbers" aria-hidden="true">
          {within.map(({ rep, number }) => (
            <span key={rep} style={{ left: share(middle.get(rep) ?? 0) }}>
              {number}
            </span>
          ))}
        </div>
        <div className="listen-scale" aria-hidden="true">
          {ticks(lengthS).map((s) => (
            <span key={s} style={{ left: share(s) }}>
              {listenScreen.at(s)}
            </span>
          ))}
        </div>
      </div>
    </section>
  );
}

function CallBar({ call, lengthS, isAsked }: { call: SoundCall; lengthS: number; isAsked: boolean }) {
  const { kind, startS, endS } = call;
  const [top, foot] = LANES.heard;
  const from = kind === 'long' ? top : kind === 'click' ? foot - 6 : top + 14;
  return (
    <rect
      className="listen-call"
      data-kind={kind}
      data-asked={isAsked}
      x={startS}
      width={Math.max(lengthS * LEAST_SHARE, endS - startS)}
      y={from}
      height={foot - from}
    />
  );
}

/** Whole marks of time, some five a screen. */
function ticks(lengthS: number): number[] {
  const step = [10, 30, 60, 120, 300, 600].find((one) => lengthS / one <= 8 + lengthS / 120) ?? 600;
  return Array.from({ length: Math.floor(lengthS / step) + 1 }, (_, n) => n * step);
}
