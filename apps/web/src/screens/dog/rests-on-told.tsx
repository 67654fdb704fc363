import type { SkillStanding } from '@sedgeline/projections';
import { useWords } from '../../parts/words-context.tsx';

/** That a skill's standing rests on what was told, until its legs outweigh it. */
export function RestsOnTold({ name, standing }: { readonly name: string; readonly standing: SkillStanding }) {
  const { dog } = useWords();
  const { told, legs, known } = standing;
  if (told === null || (known && told.left <= 0.5)) return null;
  return (
    <p className="skill-told">
      {dog.told.said(name, told)} {dog.told.standing(legs, told.left)}
    </p>
  );
}
