import type { Part } from '@sedgeline/drawing';
import { alongM } from '@sedgeline/engine/ground';
import { Button } from '../../../parts/button.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { useWords } from '../../../parts/words-context.tsx';
import { ChosenFigures } from './chosen-figures.tsx';
import type { JudgedDrawing } from './judge-drawing.ts';
import type { EditedLayout } from './layout-edit.ts';
import type { LiveLayout } from './live-layout.ts';
import { nameOfPart } from './parts-of-layout.ts';
import { PlaceFields } from './place-fields.tsx';
import { TextEntry } from './text-entry.tsx';
import type { StepLayout } from './use-layout-edit.ts';

/** How far ahead of the handler the dog is put when it is sent from elsewhere, metres: a few paces out. */
const SENT_AHEAD_M = 6;

export interface ChosenPanelProps {
  readonly part: Part;
  /** As it is drawn, without what a drag has not dropped yet. */
  readonly layout: EditedLayout;
  readonly live: LiveLayout;
  readonly judged: JudgedDrawing;
  readonly upDeg: number;
  readonly step: StepLayout;
  readonly onWholePaces: () => void;
}

/** What is chosen: its figures as they stand, and every way to change it. */
export function ChosenPanel({ part, layout, live, judged, upDeg, step, onWholePaces }: ChosenPanelProps) {
  const words = useWords();
  const { editor } = words.ground;
  return (
    <section className="edit-panel edit-chosen not-printed" aria-labelledby="edit-chosen-title">
      <h2 id="edit-chosen-title">{nameOfPart(part, judged.names, words)}</h2>
      <ChosenFigures part={part} layout={layout} judged={judged} live={live} />
      <PlaceFields part={part} layout={layout} step={step} />
      {part.part === 'thing' ? (
        <ThingFields id={part.thing} layout={layout} step={step} />
      ) : (
        <div className="edit-keys">
          <Button
            onClick={() =>
              step({
                step: 'edit',
                edit: {
                  do: 'send',
                  from:
                    layout.sendFrom === undefined
                      ? alongM(layout.handlerAt, (upDeg * Math.PI) / 180, SENT_AHEAD_M)
                      : null,
                },
              })
            }
          >
            {layout.sendFrom === undefined ? editor.sendApart : editor.sendTogether}
          </Button>
        </div>
      )}
      <div className="edit-keys">
        {(part.part === 'thing' || layout.sendFrom !== undefined) && (
          <Button look="quiet" onClick={onWholePaces}>
            {editor.snapNow}
          </Button>
        )}
        {part.part === 'thing' && (
          <Button
            look="quiet"
            onClick={() => step({ step: 'edit', edit: { do: 'remove', thing: part.thing } })}
          >
            {editor.chosen.remove}
          </Button>
        )}
      </div>
    </section>
  );
}

function ThingFields({
  id,
  layout,
  step,
}: {
  readonly id: string;
  readonly layout: EditedLayout;
  readonly step: StepLayout;
}) {
  const { chosen } = useWords().ground.editor;
  const thing = layout.things.find((each) => each.thing === id);
  if (thing === undefined) return null;
  const change = (part: Partial<typeof thing>) =>
    step({ step: 'edit', edit: { do: 'change', thing: id, change: part } });
  return (
    <>
      <TextEntry
        label={chosen.name}
        value={thing.label ?? ''}
        onEnter={(label) => {
          change({ label: label.trim() });
          return null;
        }}
      />
      {thing.kind === 'dummy' && (
        <>
          <Choice
            legend={chosen.how}
            value={thing.how ?? 'placed'}
            options={(['placed', 'thrown', 'launched'] as const).map((value) => ({
              value,
              label: chosen.hows[value],
            }))}
            onChoose={(how) => change({ how })}
          />
          <label className="edit-check">
            <input
              type="checkbox"
              checked={thing.blind === true}
              onChange={(event) => change({ blind: event.target.checked })}
            />
            <span>{chosen.blind}</span>
          </label>
        </>
      )}
    </>
  );
}
