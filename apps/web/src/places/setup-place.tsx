import type { BroughtBack } from '@sedgeline/words';
import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import { version } from '../../package.json';
import { useInstall } from '../devices/install-prompt.ts';
import { askToKeep, type Keeping, readKeeping, readRoom } from '../devices/persist-storage.ts';
import { useWords } from '../parts/words-context.tsx';
import { SetupScreen } from '../screens/setup/setup-screen.tsx';
import { bringBack, factsAsLines, leaveDemo, openRecord } from '../state/kennel.ts';
import { useKennel } from '../state/kennel-store.ts';
import { saveFile } from '../state/save-file.ts';
import { useSettings } from '../state/settings.ts';
import { Framed } from './framed.tsx';
import { useTitle } from './use-title.ts';

/** Setup, joined to the device and the record. */
export function SetupPlace() {
  const words = useWords();
  const [, go] = useLocation();
  const settings = useSettings();
  const install = useInstall();
  const record = useKennel((s) => s.record);
  const facts = useKennel((s) => s.dogs?.facts ?? 0);
  const unknownFacts = useKennel((s) => s.dogs?.unknown ?? 0);
  const [keeping, setKeeping] = useState<Keeping>('unknown');
  const [room, setRoom] = useState<Awaited<ReturnType<typeof readRoom>>>(null);
  const [exported, setExported] = useState<{ readonly facts: number; readonly name: string } | null>(null);
  const hasCopy = useKennel((s) => (s.record === 'mine' ? (s.copies?.hasCopy ?? null) : null));
  const [broughtBack, setBroughtBack] = useState<BroughtBack | null>(null);
  useEffect(() => {
    void readKeeping().then(setKeeping);
    void readRoom().then(setRoom);
  }, []);
  useTitle(words.setup.title);
  const exportRecord = async () => {
    const day = new Date().toISOString().slice(0, 10);
    const name = `sedgeline-${record === 'demo' ? 'invented-' : ''}${day}.jsonl`;
    saveFile(name, await factsAsLines(), 'application/x-ndjson');
    setExported({ facts, name });
  };
  return (
    <Framed here="setup">
      <SetupScreen
        choices={settings}
        onChoose={settings.set}
        inDemo={record === 'demo'}
        onLeaveDemo={() => void leaveDemo().then(() => go('/'))}
        onEnterDemo={() => void openRecord('demo').then(() => go('/'))}
        version={version}
        facts={facts}
        unknownFacts={unknownFacts}
        install={install}
        keeping={keeping}
        room={room}
        exported={exported}
        hasCopy={hasCopy}
        broughtBack={broughtBack}
        onBringBack={(file) => void file.text().then(bringBack).then(setBroughtBack)}
        onExport={() => void exportRecord()}
        onAskToKeep={() => void askToKeep().then(setKeeping)}
      />
    </Framed>
  );
}
