import type { ProgressLeg, ProgressView } from '@sedgeline/projections';
import { useWords } from '../../../parts/words-context.tsx';
import { placeProgress } from './place-progress.ts';

const SCALE = [1, 0.75, 0.5, 0.25, 0] as const;
/** Marks drawn last lie on top: what did not go well must not be hidden. */
const LAYERS = ['good', 'fair', 'missed'] as const;
const RADIUS = 4.5;

const percent = (share: number): string => `${Math.round(share * 10_000) / 100}%`;

/** Ability over time: the line and its band by session, every leg as a mark of its grade. The sentence beside it says the same. */
export function ProgressChart({ view }: { readonly view: ProgressView }) {
  const { progress, time } = useWords();
  const { line, band, legs } = placeProgress(view);
  return (
    <figure className="progress-chart" aria-hidden="true">
      <div className="progress-scale figures">
        {SCALE.map((chance) => (
          <span key={chance}>{progress.scale(chance)}</span>
        ))}
      </div>
      <div className="progress-plot">
        <svg aria-hidden="true" className="progress-area" viewBox="0 0 1 1" preserveAspectRatio="none">
          {SCALE.map((chance) => (
            <path key={chance} className="progress-grid" d={`M0 ${1 - chance}H1`} />
          ))}
          <path className="progress-band" d={band} />
          <path className="progress-line" d={line} />
        </svg>
        <svg aria-hidden="true" className="progress-marks">
          {LAYERS.map((grade) =>
            legs
              .filter((placed) => placed.leg.grade === grade)
              .map(({ leg, x, y }, n) => (
                <svg
                  aria-hidden="true"
                  key={`${leg.rep}-${n}`}
                  x={percent(x)}
                  y={percent(y)}
                  overflow="visible"
                >
                  <LegMark leg={leg} />
                </svg>
              )),
          )}
        </svg>
      </div>
      <div className="progress-days soft figures">
        <span>{time.date(view.points[0]!.atMs)}</span>
        {view.points.length > 1 && <span>{time.date(view.points.at(-1)!.atMs)}</span>}
      </div>
    </figure>
  );
}

/** Good a filled disc, fair half of one, missed an open ring; fainter and underlined where it is not held against the dog. */
function LegMark({ leg: { grade, weight } }: { readonly leg: ProgressLeg }) {
  return (
    <g className={weight > 0 ? 'progress-leg' : 'progress-leg progress-leg-spared'} data-grade={grade}>
      <circle r={grade === 'good' ? RADIUS : RADIUS - 0.75} />
      {grade === 'fair' && (
        <path d={`M0 ${-RADIUS + 0.75}A${RADIUS - 0.75} ${RADIUS - 0.75} 0 0 1 0 ${RADIUS - 0.75}Z`} />
      )}
      {weight === 0 && <path className="progress-under" d={`M${-RADIUS} ${RADIUS + 3}h${2 * RADIUS}`} />}
    </g>
  );
}
