import type { SkillStanding, StandingAsk } from '@sedgeline/projections';
import { ChanceBar } from '../../parts/chance-bar/chance-bar.tsx';
import { useWords } from '../../parts/words-context.tsx';
import { RecentLegs } from './recent-legs.tsx';
import { RestsOnTold } from './rests-on-told.tsx';
import { SkillNotes } from './skill-notes.tsx';

const ASKS = ['easy', 'usual', 'far'] as const;

/** The standing as a table, for a laptop and for print. */
export function StandingTable({
  name,
  skills,
  nowMs,
}: {
  readonly name: string;
  readonly skills: readonly SkillStanding[];
  readonly nowMs: number;
}) {
  const words = useWords();
  const { table } = words.dog;
  return (
    <table className="standing-table">
      <caption className="only-read-out">{words.dog.title(name)}</caption>
      <thead>
        <tr>
          <th scope="col">{table.skill}</th>
          {ASKS.map((ask) => (
            <th key={ask} scope="col">
              {words.dog.ask(ask)}
              <span className="soft">{table.chance}</span>
            </th>
          ))}
          <th scope="col">{table.never}</th>
        </tr>
      </thead>
      <tbody>
        {skills.map((standing) => (
          <tr key={standing.skill}>
            <th scope="row">
              {words.trade.skillInWords(standing.skill)}
              <span className="soft figures">
                {words.dog.legs(standing.legs)}
                {standing.lastWorkedMs !== null && `, ${words.time.ago(standing.lastWorkedMs, nowMs)}`}
              </span>
              <RecentLegs standing={standing} />
            </th>
            {ASKS.map((ask) => (
              <AskCell key={ask} standing={standing} ask={standing.asks.find((each) => each.name === ask)} />
            ))}
            <td>
              {standing.known ? (
                <SkillNotes standing={standing} />
              ) : (
                <p className="skill-unknown">{words.dog.notKnown(standing.legs)}</p>
              )}
              <RestsOnTold name={name} standing={standing} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function AskCell({
  standing,
  ask,
}: {
  readonly standing: SkillStanding;
  readonly ask: StandingAsk | undefined;
}) {
  const words = useWords();
  if (!ask) return <td>{words.dog.table.none}</td>;
  return (
    <td>
      <span className="figures standing-chance">
        <b>{words.chances.inHundred(ask.chance)}</b>{' '}
        <span className="soft">{words.chances.mayBe(ask.interval90)}</span>
      </span>
      <ChanceBar thin of={words.dog.ask(ask.name)} chance={ask.chance} interval90={ask.interval90} />
      <span className="soft figures">{words.ask.figures(standing.skill, ask.ask)}</span>
    </td>
  );
}
