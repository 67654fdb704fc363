import type { Dialect, Units } from '@sedgeline/words';
import { Choice } from '../../parts/choice.tsx';
import { useWords } from '../../parts/words-context.tsx';
import type { ThemeChoice } from '../../styles/tokens.ts';
import { Cautions } from './cautions.tsx';
import { DemoPart } from './demo-part.tsx';
import { GroundsPart } from './grounds-part.tsx';
import { InstallPart, type InstallPartProps } from './install-part.tsx';
import { RecordPart, type RecordPartProps } from './record-part.tsx';
import './setup.css';

/** What the handler chose for this device. */
export interface SetupChoices {
  readonly theme: ThemeChoice;
  readonly hand: 'left' | 'right';
  readonly dialect: Dialect;
  readonly units: Units;
}

export interface SetupScreenProps extends RecordPartProps, InstallPartProps {
  readonly choices: SetupChoices;
  readonly onChoose: (change: Partial<SetupChoices>) => void;
  readonly inDemo: boolean;
  readonly onLeaveDemo: () => void;
  readonly onEnterDemo: () => void;
  readonly version: string;
}

/** How it looks, what it says, where the record is kept. */
export function SetupScreen(props: SetupScreenProps) {
  const { choices, onChoose, inDemo, onLeaveDemo, onEnterDemo, version } = props;
  const { setup } = useWords();
  return (
    <section className="setup" aria-labelledby="setup-title">
      <h1 id="setup-title">{setup.title}</h1>
      <div className="setup-part setup-choices">
        <Choice
          legend={setup.theme.title}
          hint={setup.theme.hint}
          value={choices.theme}
          options={(['sun', 'dusk', 'system'] as const).map((value) => ({
            value,
            label: setup.theme[value],
          }))}
          onChoose={(theme) => onChoose({ theme })}
        />
        <Choice
          legend={setup.hand.title}
          hint={setup.hand.hint}
          value={choices.hand}
          options={(['left', 'right'] as const).map((value) => ({ value, label: setup.hand[value] }))}
          onChoose={(hand) => onChoose({ hand })}
        />
        <Choice
          legend={setup.dialect.title}
          hint={setup.dialect.hint}
          value={choices.dialect}
          options={(['en-GB', 'en-US'] as const).map((value) => ({ value, label: setup.dialect[value] }))}
          onChoose={(dialect) => onChoose({ dialect })}
        />
        <Choice
          legend={setup.units.title}
          hint={setup.units.hint}
          value={choices.units}
          options={(['metres', 'yards'] as const).map((value) => ({ value, label: setup.units[value] }))}
          onChoose={(units) => onChoose({ units })}
        />
      </div>
      <div className="setup-side">
        <GroundsPart />
        <RecordPart {...props} />
        <InstallPart install={props.install} />
        <DemoPart inDemo={inDemo} onLeave={onLeaveDemo} onEnter={onEnterDemo} />
      </div>
      <Cautions />
      <p className="soft setup-version">{setup.about.version(version)}</p>
    </section>
  );
}
