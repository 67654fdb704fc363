import type { SkillStanding } from '@sedgeline/projections';
import { ChanceBar } from '../../parts/chance-bar/chance-bar.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { LookCloser } from './closer/look-closer.tsx';
import { RecentLegs } from './recent-legs.tsx';
import { RestsOnTold } from './rests-on-told.tsx';
import { SkillNotes } from './skill-notes.tsx';

/** One skill on a phone: three asks with their chances, recent legs, what was never proved. */
export function SkillCard({
  dog,
  name,
  standing,
  nowMs,
}: {
  readonly dog: string;
  readonly name: string;
  readonly standing: SkillStanding;
  readonly nowMs: number;
}) {
  const words = useWords();
  const worked =
    standing.lastWorkedMs === null ? '' : words.dog.worked(words.time.ago(standing.lastWorkedMs, nowMs));
  return (
    <article className="skill-card" aria-label={words.trade.skillInWords(standing.skill)}>
      <div className="skill-card-head">
        <h2>{words.trade.skillInWords(standing.skill)}</h2>
        <p className="soft figures">
          {[words.dog.legs(standing.legs), worked].filter((part) => part !== '').join(' · ')}
        </p>
      </div>
      {!standing.known && <p className="skill-unknown">{words.dog.notKnown(standing.legs)}</p>}
      <RestsOnTold name={name} standing={standing} />
      <ul className="skill-asks">
        {standing.asks.map((ask) => (
          <li key={ask.name}>
            <p className="skill-ask-name">
              <b>{words.dog.ask(ask.name)}</b>
              <span className="soft figures">{words.ask.figures(standing.skill, ask.ask)}</span>
            </p>
            <ChanceBar chance={ask.chance} interval90={ask.interval90} />
          </li>
        ))}
      </ul>
      <RecentLegs standing={standing} />
      {standing.known && <SkillNotes standing={standing} />}
      <LookCloser dog={dog} standing={standing} nowMs={nowMs} />
    </article>
  );
}
