import { useState } from 'react';
import { Link } from 'wouter';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';
import type { GroundsView } from '../../workers/ground-desk.ts';
import { AddGroundForm } from './add-ground-form.tsx';
import type { NewGround } from './check-ground.ts';
import './ground.css';
import { groundAddress, layoutAddress } from './ground-address.ts';
import { LayoutTile } from './layout-tile.tsx';
import { PutAwayPart } from './put-away-part.tsx';

/** So many layouts of a ground are drawn on the list; the rest stand on its own page. */
const SHOWN = 4;

/** Every ground on record with what is drawn there. */
export function GroundsScreen({
  view,
  onAdd,
  onAway,
}: {
  readonly view: GroundsView;
  readonly onAdd: (ground: NewGround) => void;
  readonly onAway: (ground: string, isAway: boolean) => void;
}) {
  const { ground: words } = useWords();
  const [isAdding, setAdding] = useState(false);
  const drawn = view.layouts.filter((layout) => !layout.isPutAway);
  const homeless = drawn.filter((layout) => layout.ground === null);
  const away = view.grounds.filter((ground) => ground.isPutAway);
  const rows = [
    ...view.grounds
      .filter((ground) => !ground.isPutAway)
      .map(({ ground, name, note }) => ({ ground: ground as string | null, name, note })),
    ...(homeless.length > 0 ? [{ ground: null, name: words.noGround, note: null }] : []),
  ];
  return (
    <section className="grounds" aria-labelledby="grounds-title">
      <div className="screen-head">
        <h1 id="grounds-title">{words.title}</h1>
      </div>
      <p className="soft grounds-teach">{rows.length === 0 ? words.empty : words.teach}</p>
      <ul className="ground-rows">
        {rows.map(({ ground, name, note }) => {
          const layouts = drawn.filter((layout) => layout.ground === ground);
          return (
            <li key={ground ?? ''} className="ground-row">
              <div className="screen-head">
                <h2 className="ground-row-name">
                  <Link href={groundAddress(ground)}>{name}</Link>
                </h2>
                <p className="soft">{words.counted(layouts.length)}</p>
              </div>
              {note && <p className="soft ground-note">{note}</p>}
              <ul className="layout-tiles">
                {layouts.slice(0, SHOWN).map((layout) => (
                  <LayoutTile
                    key={layout.layout}
                    layout={layout}
                    name={layout.name ?? words.nameless}
                    href={layoutAddress(ground, layout.layout)}
                  />
                ))}
              </ul>
            </li>
          );
        })}
      </ul>
      {isAdding ? (
        <AddGroundForm
          taken={view.grounds.map(({ name }) => name)}
          onAdd={(ground) => {
            onAdd(ground);
            setAdding(false);
          }}
          onCancel={() => setAdding(false)}
        />
      ) : (
        <Button look="main" className="dogs-add" onClick={() => setAdding(true)}>
          {words.add.title}
        </Button>
      )}
      <PutAwayPart
        things={away.map(({ ground, name }) => ({
          id: ground,
          name,
          shown: <Link href={groundAddress(ground)}>{name}</Link>,
        }))}
        onBack={(ground) => onAway(ground, false)}
      />
    </section>
  );
}
