import { useWords } from '../../../parts/words-context.tsx';
import type { EditedLayout } from './layout-edit.ts';
import { TextEntry } from './text-entry.tsx';
import { typedNumber } from './typed-number.ts';
import type { StepLayout } from './use-layout-edit.ts';

/** No wind that a dog is worked in, m/s; more is a mistyped figure. */
const STRONGEST_M_PER_S = 60;

/** Where the wind comes from and how hard it blows; both may be left empty. */
export function WindFields({ layout, step }: { readonly layout: EditedLayout; readonly step: StepLayout }) {
  const { ground, tongue } = useWords();
  const { wind, chosen } = ground.editor;
  const { windFromDeg, windMPerS } = layout;
  const { mPerS } = tongue.windUnit;
  const enter = (text: string, most: number, put: (value: number | null) => void): string | null => {
    const value = text.trim() === '' ? null : typedNumber(text);
    if (text.trim() !== '' && (value === null || value < 0 || value > most))
      return chosen.fault('wind-unreadable');
    put(value);
    return null;
  };
  const put = (fromDeg: number | null, speed: number | null) =>
    step({ step: 'edit', edit: { do: 'wind', fromDeg, mPerS: speed } });
  return (
    <fieldset className="edit-panel edit-wind not-printed">
      <legend>{wind.title}</legend>
      <div className="edit-pair">
        <TextEntry
          label={wind.from}
          isFigure
          value={windFromDeg === undefined ? '' : tongue.number(windFromDeg)}
          onEnter={(text) => enter(text, 360, (value) => put(value, windMPerS ?? null))}
        />
        <TextEntry
          label={wind.speed}
          isFigure
          value={windMPerS === undefined ? '' : tongue.number(windMPerS / mPerS, 1)}
          onEnter={(text) =>
            enter(text, STRONGEST_M_PER_S / mPerS, (value) =>
              put(windFromDeg ?? null, value === null ? null : value * mPerS),
            )
          }
        />
      </div>
      <p className="soft edit-note">{wind.calm}</p>
    </fieldset>
  );
}
