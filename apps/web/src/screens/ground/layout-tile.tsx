import { distanceBetweenM, type Layout } from '@sedgeline/engine/ground';
import { Link } from 'wouter';
import { Button } from '../../parts/button.tsx';
import { GroundCard } from '../../parts/field-card/ground-card.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** A layout among others: its drawing, its name, how much lies out and how far. */
export function LayoutTile({
  layout,
  name,
  href,
  note,
  onPutAway,
}: {
  readonly layout: Layout;
  readonly name: string;
  readonly href: string;
  /** What is said of it in place of figures. */
  readonly note?: string;
  readonly onPutAway?: () => void;
}) {
  const { ground } = useWords();
  const from = layout.sendFrom ?? layout.handlerAt;
  const farthestM = Math.max(0, ...layout.things.map((thing) => distanceBetweenM(from, thing)));
  const figures = `${ground.things(layout.things.length)}, ${ground.farthest(farthestM)}`;
  return (
    <li className="layout-tile">
      <GroundCard layout={layout} title={ground.picture} />
      <p className="layout-tile-name">
        <Link href={href}>{name}</Link>
      </p>
      <p className="soft layout-tile-note">{note ?? figures}</p>
      {onPutAway && (
        <Button
          look="quiet"
          className="layout-tile-away"
          aria-label={ground.away.putOf(name)}
          onClick={onPutAway}
        >
          {ground.away.put}
        </Button>
      )}
    </li>
  );
}
