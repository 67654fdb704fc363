import { useWords } from '../words-context.tsx';
import './grade-mark.css';
import { GradeMark } from './grade-mark.tsx';

export interface SparkLeg {
  readonly grade: 'good' | 'fair' | 'missed';
  readonly cause: 'dog' | 'handler' | 'setup' | 'unsure' | null;
}

/** Recent legs as a row of marks, oldest first; a leg not held against the dog is fainter and underlined. */
export function SparkLegs({ legs }: { readonly legs: readonly SparkLeg[] }) {
  const words = useWords();
  const count = (grade: SparkLeg['grade']): number => legs.filter((leg) => leg.grade === grade).length;
  const said = `${words.dog.recent}: ${words.dog.recentSaid(count('good'), count('fair'), count('missed'))}`;
  return (
    <span className="spark-legs" role="img" aria-label={said}>
      {legs.map((leg, i) => (
        <span key={i} className={heldAgainstDog(leg) ? 'spark-leg' : 'spark-leg spark-leg-spared'}>
          <GradeMark grade={leg.grade} size={14} />
        </span>
      ))}
    </span>
  );
}

const heldAgainstDog = (leg: SparkLeg): boolean => leg.cause !== 'handler' && leg.cause !== 'setup';
