import { Button } from '../../parts/button.tsx';
import { useWords } from '../../parts/words-context.tsx';

/** Into the invented kennel, and out of it with one tap. */
export function DemoPart({
  inDemo,
  onLeave,
  onEnter,
}: {
  readonly inDemo: boolean;
  readonly onLeave: () => void;
  readonly onEnter: () => void;
}) {
  const { setup, dogs } = useWords();
  return (
    <section className="setup-part" aria-labelledby="demo-title">
      <h2 id="demo-title">{setup.demo.title}</h2>
      {inDemo && <p>{setup.demo.in}</p>}
      <Button onClick={inDemo ? onLeave : onEnter}>{inDemo ? setup.demo.leave : setup.demo.enter}</Button>
      <p className="soft setup-note">{inDemo ? setup.demo.leaveHint : dogs.first.demoNote}</p>
    </section>
  );
}
