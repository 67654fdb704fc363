import { type Ask, easyAsk } from '@sedgeline/engine/ability';
import type { AskedLeg } from '@sedgeline/projections';
import { Choice } from '../choice.tsx';
import { useWords } from '../words-context.tsx';
import { type AskControl, askControls, stepped } from './ask-fields.ts';
import { Stepper } from './stepper.tsx';

interface AskEditorProps {
  readonly leg: AskedLeg;
  readonly onSet: (field: keyof Ask, value: Ask[keyof Ask]) => void;
}

const SCALE = [0, 1, 2, 3] as const;

/** Every field of one leg's ask, each a tap away. */
export function AskEditor({ leg, onSet }: AskEditorProps) {
  return (
    <div className="work-fields">
      {askControls(leg.skill).map((control) => (
        <AskField key={control.field} control={control} leg={leg} onSet={onSet} />
      ))}
    </div>
  );
}

function AskField({ control, leg, onSet }: AskEditorProps & { readonly control: AskControl }) {
  const { work, trade, tongue } = useWords();
  const easy = easyAsk(leg.skill);
  const title = work.field(control.field);
  switch (control.by) {
    case 'steps': {
      const { field, small, big } = control;
      const value = leg.ask[field] ?? easy[field];
      // Lengths are stepped in the unit that is shown; the record is metres.
      const unit =
        field === 'distanceM' || field === 'castM' ? tongue.unitM : field === 'wayFraction' ? 0.01 : 1;
      const scale = field === 'distanceM' || field === 'castM' ? tongue.unitM : 1;
      return (
        <Stepper
          field={field}
          title={title}
          value={value / unit}
          unit={work.fieldUnit(field)}
          steps={big === null ? [small * (scale / unit)] : [(small * scale) / unit, (big * scale) / unit]}
          onSet={(shown) => onSet(field, stepped(field, shown * unit, 0))}
        />
      );
    }
    case 'words': {
      const { field, values } = control;
      const value = leg.ask[field] ?? easy[field];
      const name = (one: (typeof values)[number]) =>
        field === 'temptation'
          ? trade.temptation(one as NonNullable<Ask['temptation']>)
          : trade.handlerPlace(one as NonNullable<Ask['handlerPlace']>);
      return (
        <Choice
          legend={title}
          options={values.map((one) => ({ value: one, label: name(one) }))}
          value={value}
          onChoose={(one) => onSet(field, one)}
        />
      );
    }
    case 'scale': {
      const { field } = control;
      const value = Math.round(leg.ask[field] ?? 0);
      return (
        <Choice
          legend={title}
          options={SCALE.map((one) => ({ value: String(one), label: trade[field](one) }))}
          value={String(value)}
          onChoose={(one) => onSet(field, Number(one))}
        />
      );
    }
    case 'seen':
      return (
        <Choice
          legend={title}
          options={(['false', 'true'] as const).map((one) => ({ value: one, label: work.seen[one] }))}
          value={leg.ask.blind === true ? 'true' : 'false'}
          onChoose={(one) => onSet('blind', one === 'true')}
        />
      );
  }
}
