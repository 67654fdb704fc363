import { create } from 'zustand';
import { createJSONStorage, persist } from 'zustand/middleware';
import { pageStorage } from '../devices/page-storage.ts';
import type { RecordName } from '../workers/kennel-calls.ts';

export type Theme = 'system' | 'sun' | 'dusk';
export type Hand = 'left' | 'right';

/** How this device shows things; none of it is in the record. */
export interface Settings {
  readonly theme: Theme;
  /** The hand that holds the phone: Work's keys are mirrored for the left. */
  readonly hand: Hand;
  readonly dialect: 'en-GB' | 'en-US';
  readonly units: 'metres' | 'yards';
  /** Single keys on Work (1 2 3, 0, space, letters); off for those whose voice or switch input types letters. */
  readonly keysOnWork: boolean;
  readonly tone: boolean;
  readonly vibration: boolean;
  /** Neither sound nor vibration, whatever the two before say. */
  readonly quiet: boolean;
  /** Ask after each rep what it was paid with. */
  readonly keepReward: boolean;
  /** Among dogs worked in turn: on to the next dog after a rep. */
  readonly turnByItself: boolean;
  readonly record: RecordName;
}

export interface SettingsState extends Settings {
  readonly set: (change: Partial<Settings>) => void;
}

const FIRST: Settings = {
  theme: 'system',
  hand: 'right',
  dialect: 'en-GB',
  units: 'metres',
  keysOnWork: true,
  tone: true,
  vibration: true,
  quiet: false,
  keepReward: false,
  turnByItself: true,
  record: 'mine',
};

/** Settings, kept in `localStorage`; where that is refused they last as long as the page. */
export const useSettings = create<SettingsState>()(
  persist((set) => ({ ...FIRST, set: (change) => set(change) }), {
    name: 'sedgeline.settings',
    version: 1,
    storage: createJSONStorage(() => pageStorage),
    partialize: ({ set: _, ...settings }) => settings,
  }),
);

/** Puts the theme on the page, and keeps it there. */
export function followTheme(page: HTMLElement): void {
  const put = ({ theme }: Settings) => {
    page.dataset.theme = theme;
  };
  put(useSettings.getState());
  useSettings.subscribe(put);
}
