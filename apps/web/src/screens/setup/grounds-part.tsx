import { Link } from 'wouter';
import { useWords } from '../../parts/words-context.tsx';

/** The way to the grounds and to what is drawn on them. */
export function GroundsPart() {
  const { ground } = useWords();
  return (
    <section className="setup-part" aria-labelledby="grounds-part">
      <h2 id="grounds-part">{ground.title}</h2>
      <p>{ground.teach}</p>
      <Link href="/grounds" className="button button-plain">
        {ground.open}
      </Link>
    </section>
  );
}
