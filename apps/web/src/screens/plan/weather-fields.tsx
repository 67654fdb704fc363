import type { PlanWeather } from '@sedgeline/engine/session';
import { type Ref, useState } from 'react';
import { Field } from '../../parts/field.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { readFigure } from './read-figure.ts';

/** What may be typed, in the record's units. */
const FIELDS = [
  { field: 'airC', least: -40, most: 60 },
  { field: 'humidityPct', least: 0, most: 100 },
  { field: 'windMPerS', least: 0, most: 60 },
  { field: 'windFromDeg', least: 0, most: 360 },
] as const;
type WeatherField = (typeof FIELDS)[number]['field'];

/** The day's weather, every figure of which may be left out. What is typed amiss stays, with what is wrong beside it. */
export function WeatherFields({
  weather,
  fieldsRef,
  onSet,
}: {
  readonly weather: PlanWeather;
  readonly fieldsRef: Ref<HTMLFieldSetElement>;
  readonly onSet: (weather: PlanWeather) => void;
}) {
  const { planScreen, tongue } = useWords();
  const { wish } = planScreen;
  const labels: Readonly<Record<WeatherField, string>> = {
    airC: wish.airC,
    humidityPct: wish.humidity,
    windMPerS: wish.wind,
    windFromDeg: wish.windFrom,
  };
  return (
    <fieldset className="plan-weather" ref={fieldsRef} tabIndex={-1}>
      <legend>{wish.weather}</legend>
      {FIELDS.map(({ field, least, most }) => {
        const unit = field === 'windMPerS' ? tongue.windUnit.mPerS : 1;
        return (
          <Figure
            key={field}
            label={labels[field]}
            value={weather[field]}
            unit={unit}
            least={least}
            most={most}
            onSet={(value) => onSet({ ...weather, [field]: value })}
          />
        );
      })}
    </fieldset>
  );
}

function Figure(props: {
  readonly label: string;
  readonly value: number | undefined;
  /** What one of the shown unit is in the record's. */
  readonly unit: number;
  readonly least: number;
  readonly most: number;
  readonly onSet: (value: number | undefined) => void;
}) {
  const { label, value, unit, least, most, onSet } = props;
  const { planScreen } = useWords();
  const shown = value === undefined ? '' : String(Math.round((value / unit) * 10) / 10);
  const [typed, setTyped] = useState<string | null>(null);
  const reading = readFigure(typed ?? shown, least / unit, most / unit);
  const settle = () => {
    if (typed === null || !reading.ok) return;
    setTyped(null);
    const next = reading.value === undefined ? undefined : reading.value * unit;
    if (next !== value) onSet(next);
  };
  const isWrong = typed !== null && !reading.ok;
  return (
    <Field
      label={label}
      error={isWrong ? planScreen.wish.notGood(Math.round(least / unit), Math.round(most / unit)) : null}
    >
      {(ties) => (
        <input
          {...ties}
          inputMode="decimal"
          autoComplete="off"
          value={typed ?? shown}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={settle}
          onKeyDown={(event) => event.key === 'Enter' && settle()}
        />
      )}
    </Field>
  );
}
