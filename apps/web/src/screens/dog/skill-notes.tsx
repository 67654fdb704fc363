import type { SkillStanding } from '@sedgeline/projections';
import { useWords } from '../../parts/words-context.tsx';

/** What was never proved, and the warning where counting every leg against the dog would say something else. */
export function SkillNotes({ standing }: { readonly standing: SkillStanding }) {
  const words = useWords();
  const unproved = standing.unproved.map(({ code, value }) => words.dog.unproved(code, value));
  return (
    <>
      <p className="skill-unproved">{words.dog.neverProved(unproved)}</p>
      {standing.countingEverything && standing.countingEverything.length > 0 && (
        <p className="skill-counting">
          {words.dog.countingEverything(
            standing.countingEverything.map(({ name, chance }) => ({
              name: words.dog.ask(name),
              inHundred: words.chances.inHundred(chance),
            })),
          )}
        </p>
      )}
    </>
  );
}
