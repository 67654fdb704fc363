import type { Part } from '@sedgeline/drawing';
import { alongM, bearingDegOf, distanceBetweenM } from '@sedgeline/engine/ground';
import { useWords } from '../../../parts/words-context.tsx';
import type { EditedLayout } from './layout-edit.ts';
import { originOfPart, placeOfPart } from './parts-of-layout.ts';
import { TextEntry } from './text-entry.tsx';
import { typedNumber } from './typed-number.ts';
import type { StepLayout } from './use-layout-edit.ts';

/** The longest way that can be typed, metres: more is a mistyped figure (our judgement, 2026). */
const FARTHEST_M = 2000;

/** Exact distance and bearing of a part from where it is counted. */
export function PlaceFields({
  part,
  layout,
  step,
}: {
  readonly part: Part;
  readonly layout: EditedLayout;
  readonly step: StepLayout;
}) {
  const { ground, tongue } = useWords();
  const { chosen } = ground.editor;
  const [at, from] = [placeOfPart(part, layout), originOfPart(part, layout)];
  if (at === null || from === null) return null;
  const distanceM = distanceBetweenM(from, at);
  const bearingDeg = bearingDegOf(from, at);
  const put = (lengthM: number, deg: number) =>
    step({
      step: 'edit',
      edit: { do: 'move', part, to: alongM(from, (deg * Math.PI) / 180, lengthM) },
    });
  return (
    <div className="edit-pair">
      <TextEntry
        label={chosen.distance}
        isFigure
        value={tongue.number(distanceM / tongue.unitM, 1).replaceAll(',', '')}
        onEnter={(text) => {
          const value = typedNumber(text);
          if (value === null || value <= 0) return chosen.fault('distance-unreadable');
          if (value * tongue.unitM > FARTHEST_M) return chosen.fault('distance-far');
          put(value * tongue.unitM, bearingDeg);
          return null;
        }}
      />
      <TextEntry
        label={chosen.bearing}
        isFigure
        value={tongue.number(bearingDeg, 1)}
        onEnter={(text) => {
          const value = typedNumber(text);
          if (value === null || value < 0 || value > 360) return chosen.fault('bearing-unreadable');
          put(distanceM, value);
          return null;
        }}
      />
    </div>
  );
}
