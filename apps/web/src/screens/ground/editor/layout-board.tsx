import {
  type CardBox,
  drawLayout,
  drawPart,
  type GroundScale,
  isSame,
  type Part,
  type Spot,
  shapeOfLabel,
  shapeOfMark,
  shapesOfDrawing,
} from '@sedgeline/drawing';
import type { PlanePoint } from '@sedgeline/engine/ground';
import { type KeyboardEvent, memo, useEffect, useId, useMemo, useRef, useState } from 'react';
import '../../../parts/field-card/field-card.css';
import { ShapeView } from '../../../parts/field-card/shape-view.tsx';
import { useWords } from '../../../parts/words-context.tsx';
import { applyEdit, type EditedLayout } from './layout-edit.ts';
import { figuresOfPart, keyOfPart, nameOfPart, partsOf, placeOfPart } from './parts-of-layout.ts';
import { REACH, useDrag } from './use-drag.ts';
import { useKeyRun } from './use-key-run.ts';

export interface LayoutBoardProps {
  readonly layout: EditedLayout;
  readonly names: ReadonlyMap<string, string>;
  readonly chosen: Part | null;
  readonly box: CardBox;
  readonly scale: GroundScale;
  readonly onChoose: (part: Part | null) => void;
  readonly onMove: (part: Part, to: PlanePoint) => void;
  /** The layout at this frame of a drag; `null` when it is over. */
  readonly onLive: (layout: EditedLayout | null) => void;
  readonly onKey: (event: KeyboardEvent) => void;
  readonly settle: (part: Part, to: PlanePoint) => PlanePoint;
}

/**
 * The layout to draw on: every part can be dragged, and reached and moved with keys. What stands still and what moves are
 * two drawings, one over the other, so that a frame of a drag paints the one thing.
 */
export const LayoutBoard = memo(function LayoutBoard(props: LayoutBoardProps) {
  const { layout, chosen, box, scale, onChoose, onMove, onLive, onKey, settle } = props;
  const { run, begin, end } = useKeyRun(layout, props.names, chosen);
  const standing = run?.before ?? layout;
  const names = run?.names ?? props.names;
  const { picture, ground } = useWords();
  const id = useId();
  const svg = useRef<SVGSVGElement>(null);
  const [live, setLive] = useState<{ readonly part: Part; readonly layout: EditedLayout } | null>(null);
  const moving = live?.part ?? run?.part ?? null;
  const still = useMemo(() => {
    const drawing = drawLayout(standing, scale, box, picture, { chosen, moving, grid: true });
    return shapesOfDrawing(drawing).map((shape, i) => <ShapeView key={i} shape={shape} />);
  }, [standing, scale, box, picture, chosen, moving]);
  const parts = useMemo(() => partsOf(standing), [standing]);
  const spots = useMemo(
    () =>
      parts.map((part) => ({ part, at: scale.toCard(placeOfPart(part, standing) ?? standing.handlerAt) })),
    [parts, standing, scale],
  );
  const drag = useDrag(svg, box, scale, {
    spots,
    settle,
    onTake: (part) => {
      onChoose(part);
      handleOf(svg.current, part)?.focus({ preventScroll: true });
    },
    onLive: (part, to) => {
      const now = to === null ? null : applyEdit(layout, { do: 'move', part, to });
      setLive((before) => (now === null ? null : { part: before?.part ?? part, layout: now }));
      onLive(now);
    },
    onDrop: onMove,
  });
  // What was put down or taken back by a key is where the next key goes.
  const isHeld = useRef(false);
  useEffect(() => {
    const { activeElement, body } = document;
    // What had the focus may be gone: then it is nowhere.
    const isOnBoard =
      svg.current?.contains(activeElement) === true || (isHeld.current && activeElement === body);
    if (chosen !== null && isOnBoard) handleOf(svg.current, chosen)?.focus({ preventScroll: true });
  }, [chosen]);
  const viewBox = `0 0 ${box.width} ${box.height}`;
  return (
    <div className="field-card layout-board" style={{ aspectRatio: `${box.width} / ${box.height}` }}>
      <svg className="board-still" viewBox={viewBox} aria-hidden="true">
        {still}
      </svg>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot stand inside a drawing, and the drawing is the group */}
      <svg
        ref={svg}
        className="board-top"
        viewBox={viewBox}
        role="group"
        aria-labelledby={`${id}-title`}
        aria-describedby={`${id}-hint`}
        data-metres-per-unit={1 / scale.unitsPerMetre}
        data-up-deg={scale.upDeg}
        onKeyDown={(event) => {
          if (event.key.startsWith('Arrow')) begin();
          else end();
          onKey(event);
        }}
        onFocus={() => {
          isHeld.current = true;
        }}
        onBlur={({ relatedTarget }) => {
          if (relatedTarget !== null) isHeld.current = svg.current?.contains(relatedTarget) === true;
        }}
        onMouseDown={(event) => event.preventDefault()}
        {...drag}
      >
        <title id={`${id}-title`}>{ground.editor.board}</title>
        <desc id={`${id}-hint`}>{ground.editor.boardHint}</desc>
        {live && <Moving {...props} live={live.layout} part={live.part} />}
        {run && live === null && <Moving {...props} live={layout} part={run.part} />}
        <Handles layout={standing} names={names} chosen={chosen} spots={spots} onChoose={onChoose} />
      </svg>
    </div>
  );
});

/** What keys and screen readers hold on to, one for each part; they stay where they are while one is dragged. */
const Handles = memo(function Handles({
  layout,
  names,
  chosen,
  spots,
  onChoose,
}: Pick<LayoutBoardProps, 'layout' | 'names' | 'chosen' | 'onChoose'> & {
  readonly spots: readonly { readonly part: Part; readonly at: Spot }[];
}) {
  const words = useWords();
  return spots.map(({ part, at }) => (
    // biome-ignore lint/a11y/useSemanticElements: a button of HTML cannot stand in an SVG
    <g
      key={keyOfPart(part)}
      className="board-handle"
      role="button"
      tabIndex={0}
      data-part={keyOfPart(part)}
      aria-pressed={isSame(part, chosen)}
      aria-label={[nameOfPart(part, names, words), figuresOfPart(part, layout, words)]
        .filter((text) => text !== '')
        .join(', ')}
      transform={`translate(${at.x.toFixed(1)} ${at.y.toFixed(1)})`}
      onFocus={() => onChoose(part)}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        onChoose(part);
      }}
      // A click without a pointer is a screen reader's; the board itself takes what a pointer does.
      onClick={({ detail }) => {
        if (detail === 0) onChoose(part);
      }}
    >
      <circle r={REACH} />
    </g>
  ));
});

/** What is being moved, drawn alone: all that changes in a frame. */
function Moving({
  live,
  part,
  scale,
  box,
}: LayoutBoardProps & { readonly live: EditedLayout; readonly part: Part }) {
  const { picture } = useWords();
  const { marks, labels } = drawPart(live, scale, box, picture, part);
  return (
    <g data-moving="true">
      {marks.map((mark, i) => (
        <ShapeView key={i} shape={shapeOfMark(mark, false)} />
      ))}
      {labels.map((label, i) => (
        <ShapeView key={`label ${i}`} shape={shapeOfLabel(label)} />
      ))}
    </g>
  );
}

function handleOf(svg: SVGSVGElement | null, part: Part | null): SVGElement | null {
  if (svg === null || part === null) return null;
  return svg.querySelector(`[data-part="${CSS.escape(keyOfPart(part))}"]`);
}
