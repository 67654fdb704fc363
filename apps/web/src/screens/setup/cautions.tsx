import { useWords } from '../../parts/words-context.tsx';

/** Cautions in short, and who is to be asked. */
export function Cautions() {
  const words = useWords();
  const { about } = words.setup;
  return (
    <section className="setup-part cautions" aria-labelledby="cautions-title">
      <h2 id="cautions-title">{about.title}</h2>
      <p>{about.lead}</p>
      <ul>
        {words.cautions.list.map((caution) => (
          <li key={caution.code}>
            <b>{caution.title}.</b> {caution.text}
          </li>
        ))}
      </ul>
    </section>
  );
}
