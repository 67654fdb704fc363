import { useWords } from '../../parts/words-context.tsx';
import { useSettings } from '../../state/settings.ts';

const SWITCHES = ['quiet', 'tone', 'vibration', 'keysOnWork', 'keepReward', 'turnByItself'] as const;

/** What this screen does with the device: keys, the tone and the pulse, each to be turned off. */
export function PanelDevice() {
  const { work } = useWords();
  const settings = useSettings();
  return (
    <section className="work-panel-part" aria-label={work.panel.device}>
      <h2>{work.panel.device}</h2>
      {SWITCHES.map((name) => (
        <label key={name} className="work-switch">
          <input
            type="checkbox"
            checked={settings[name]}
            onChange={(event) => settings.set({ [name]: event.target.checked })}
          />
          {work.panel.switches[name]}
        </label>
      ))}
      <p className="work-keys-hint">{work.panel.keys}</p>
    </section>
  );
}
