import type { SoundCall } from '@sedgeline/engine/sound';
import type { SoundJoined } from '@sedgeline/journal';
import type { JoinProposal } from '@sedgeline/projections';
import { useWords } from '../../parts/words-context.tsx';
import { numberRows, timeMarks } from './line-places.ts';

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
/** A row of numbers under the reps is this high. */
const ROW_EM = 1.5;
/** A mark of time beyond this share of the line is written before its place: it would be cut off. */
const AT_THE_END = 0.93;

/** What was heard over the reps by time: a blast as a bar, a pip as a short one, a click as a dot, a join as a line down to its rep. */
export function TimeLine({ proposal, lengthS, joins, askedS }: TimeLineProps) {
  const { listenScreen } = useWords();
  const { calls, reps } = proposal;
  const share = (s: number) => `${(100 * Math.min(lengthS, Math.max(0, s))) / lengthS}%`;
  const within = reps.filter(({ fromS, toS }) => toS >= 0 && fromS <= lengthS);
  const middle = new Map(within.map((rep) => [rep.rep, (Math.max(0, rep.fromS) + rep.toS) / 2]));
  const rows = numberRows(
    within.map(({ rep }) => middle.get(rep) ?? 0),
    lengthS,
  );
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
        <div
          className="listen-numbers"
          aria-hidden="true"
          style={{ height: `${ROW_EM * Math.max(1, ...rows.map((row) => row + 1))}em` }}
        >
          {within.map(({ rep, number }, n) => (
            <span
              key={rep}
              style={{ left: share(middle.get(rep) ?? 0), top: `${ROW_EM * (rows[n] ?? 0)}em` }}
            >
              {number}
            </span>
          ))}
        </div>
        <div className="listen-scale" aria-hidden="true">
          {timeMarks(lengthS).map((s) => (
            <span key={s} data-end={s > AT_THE_END * lengthS} style={{ left: share(s) }}>
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
