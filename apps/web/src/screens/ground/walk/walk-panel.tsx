import type { Part } from '@sedgeline/drawing';
import { bearingDegOf, distanceBetweenM, type PlanePoint, type Thing } from '@sedgeline/engine/ground';
import { useState } from 'react';
import { Button } from '../../../parts/button.tsx';
import { useWords } from '../../../parts/words-context.tsx';
import type { EditedLayout } from '../editor/layout-edit.ts';
import { useWalk } from './use-walk.ts';
import { type WalkOrigin, walkedPlace } from './walked-place.ts';

export interface WalkPanelProps {
  readonly layout: EditedLayout;
  readonly chosen: Part | null;
  readonly chosenName: string;
  readonly onAdd: (what: Pick<Thing, 'kind' | 'blind'>, at: PlanePoint) => void;
  readonly onMove: (part: Part, to: PlanePoint) => void;
}

const ADDS = ['post', 'dummy', 'blind', 'hazard'] as const;

/** Lays the ground out by walking it: where the device is, how well that is known, and what to put down there. */
export function WalkPanel({ layout, chosen, chosenName, onAdd, onMove }: WalkPanelProps) {
  const { ground, picture } = useWords();
  const { walk: say, editor } = ground;
  const { isOn, fault, accuracyM, place, hasMoved, start, stop } = useWalk();
  const [origin, setOrigin] = useState<WalkOrigin | null>(null);
  const [placed, setPlaced] = useState('');
  const sendAt = layout.sendFrom ?? layout.handlerAt;
  const at = origin === null || place === null ? null : walkedPlace(origin, place);
  const isTooFar = origin !== null && place !== null && at === null;
  const begin = () => {
    if (place === null) return;
    setOrigin({ geo: place, at: sendAt });
    setPlaced(say.placed(say.handler, place.radiusM));
  };
  const put = (name: string, act: (here: PlanePoint) => void) => () => {
    if (at === null || place === null) return;
    act(at);
    setPlaced(say.placed(name, place.radiusM));
  };
  return (
    <section className="edit-panel edit-walk not-printed" aria-labelledby="walk-title">
      <h2 id="walk-title">{say.title}</h2>
      {!isOn && <p className="soft">{say.teach}</p>}
      {(fault !== null || isTooFar) && (
        <p className="edit-warning" role="alert">
          {say.fault(isTooFar ? 'too-far' : (fault ?? 'no-signal'))}
        </p>
      )}
      {isOn && place === null && fault === null && <p role="status">{say.waiting}</p>}
      {isOn && place !== null && (
        <div className="edit-walk-now figures" role="status">
          {accuracyM !== null && <p>{say.now(accuracyM)}</p>}
          <p>{hasMoved ? say.moving : say.standing(place.fixes, place.radiusM)}</p>
          {at !== null && (
            <p>{say.from(distanceBetweenM(sendAt, at), picture.bearing(bearingDegOf(sendAt, at)))}</p>
          )}
        </div>
      )}
      {isOn && place !== null && origin === null && (
        <>
          <p>{say.first}</p>
          <Button look="main" onClick={begin}>
            {say.handler}
          </Button>
        </>
      )}
      {isOn && at !== null && (
        <>
          <p id="walk-put">{say.put}</p>
          {/* biome-ignore lint/a11y/useSemanticElements: a fieldset's legend cannot be the sentence that stands above */}
          <div className="edit-tool-row" role="group" aria-labelledby="walk-put">
            {ADDS.map((what) => {
              const name = what === 'blind' ? editor.blind : editor.kind(what);
              const thing = what === 'blind' ? { kind: 'dummy' as const, blind: true } : { kind: what };
              return (
                <Button key={what} onClick={put(name, (here) => onAdd(thing, here))}>
                  {name}
                </Button>
              );
            })}
            {chosen !== null && (
              <Button onClick={put(chosenName, (here) => onMove(chosen, here))}>
                {say.chosen(chosenName)}
              </Button>
            )}
          </div>
          <p className="soft edit-note">{say.rough}</p>
        </>
      )}
      <p role="status">{placed}</p>
      <div className="edit-keys">
        <Button
          look={isOn ? 'quiet' : 'plain'}
          onClick={() => {
            setOrigin(null);
            setPlaced('');
            if (isOn) stop();
            else start();
          }}
        >
          {isOn ? say.stop : say.start}
        </Button>
      </div>
    </section>
  );
}
