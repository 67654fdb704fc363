import { STARTING_LAYOUTS } from '@sedgeline/engine/ground';
import { Link } from 'wouter';
import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';
import type { GroundsView } from '../../workers/ground-desk.ts';
import './ground.css';
import { layoutAddress, newLayoutAddress } from './ground-address.ts';
import { LayoutTile } from './layout-tile.tsx';
import { PutAwayPart } from './put-away-part.tsx';
import { EMPTY_FIELD, startingDrawing } from './starting-drawing.ts';

/** One ground: what is drawn there, and layouts to begin from. */
export function GroundScreen({
  view,
  ground,
  onAway,
  onLayoutAway,
}: {
  readonly view: GroundsView;
  readonly ground: string | null;
  readonly onAway: (ground: string, isAway: boolean) => void;
  readonly onLayoutAway: (layout: string, isAway: boolean) => void;
}) {
  const words = useWords();
  const { ground: say } = words;
  const here = view.grounds.find((one) => one.ground === ground);
  const drawn = view.layouts.filter((layout) => layout.ground === ground);
  const layouts = drawn.filter((layout) => !layout.isPutAway);
  const away = drawn.filter((layout) => layout.isPutAway);
  return (
    <section className="grounds" aria-labelledby="ground-title">
      <Link className="ground-back" href="/grounds">
        {say.back}
      </Link>
      <div className="screen-head">
        <h1 id="ground-title">{here?.name ?? say.noGround}</h1>
        {here?.at && <p className="soft figures">{say.place(here.at.latDeg, here.at.lonDeg)}</p>}
      </div>
      {here?.note && <p className="soft">{here.note}</p>}
      {here && (
        <div className="ground-away">
          {here.isPutAway && <p role="status">{say.away.isAway}</p>}
          <Button look="quiet" onClick={() => onAway(here.ground, !here.isPutAway)}>
            {here.isPutAway ? say.away.back : say.away.putGround}
          </Button>
        </div>
      )}
      {layouts.length > 0 && (
        <>
          <h2>{say.layouts}</h2>
          <ul className="layout-tiles">
            {layouts.map((layout) => (
              <LayoutTile
                key={layout.layout}
                layout={layout}
                name={layout.name ?? say.nameless}
                href={layoutAddress(ground, layout.layout)}
                onPutAway={() => onLayoutAway(layout.layout, true)}
              />
            ))}
          </ul>
        </>
      )}
      <h2>{say.begin}</h2>
      {drawn.length === 0 && <p className="soft">{say.noLayout}</p>}
      <ul className="layout-tiles">
        <LayoutTile
          layout={startingDrawing(EMPTY_FIELD, words)}
          name={say.emptyField.name}
          href={newLayoutAddress(ground, EMPTY_FIELD)}
          note={say.emptyField.purpose}
        />
        {STARTING_LAYOUTS.map(({ code }) => {
          const { name, terrain, purpose } = say.starting(code);
          return (
            <LayoutTile
              key={code}
              layout={startingDrawing(code, words)}
              name={name}
              href={newLayoutAddress(ground, code)}
              note={`${purpose} ${say.fits(terrain)}`}
            />
          );
        })}
      </ul>
      <PutAwayPart
        things={away.map((layout) => {
          const name = layout.name ?? say.nameless;
          return {
            id: layout.layout,
            name,
            shown: <Link href={layoutAddress(ground, layout.layout)}>{name}</Link>,
          };
        })}
        onBack={(layout) => onLayoutAway(layout, false)}
      />
    </section>
  );
}
