import { Link } from 'wouter';

/** Said where an address names what is not in the record, with the way on. */
export function NotHere({
  title,
  to,
  onward,
}: {
  readonly title: string;
  readonly to: string;
  readonly onward: string;
}) {
  return (
    <section className="shell-lost">
      <h1>{title}</h1>
      <Link className="button button-plain" href={to}>
        {onward}
      </Link>
    </section>
  );
}
