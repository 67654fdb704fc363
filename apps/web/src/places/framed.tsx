import type { ReactNode } from 'react';
import { useLocation } from 'wouter';
import { useAppUpdate } from '../devices/app-update.ts';
import { Button } from '../parts/button.tsx';
import { ListeningBar } from '../parts/listening-bar.tsx';
import { Notice } from '../parts/notice.tsx';
import { useWords } from '../parts/words-context.tsx';
import type { PlaceName } from '../screens/shell/place-icon.tsx';
import { Shell } from '../screens/shell/shell.tsx';
import { NotSavedBar } from '../screens/work/not-saved-bar.tsx';
import { leaveDemo } from '../state/kennel.ts';
import { useKennel } from '../state/kennel-store.ts';
import { KeepingNews } from './keeping-news.tsx';

/** A screen in its frame, with what must be told over it: the demo, what was not saved, a newer program. */
export function Framed({ here, children }: { readonly here: PlaceName; readonly children: ReactNode }) {
  return (
    <Shell here={here} banner={<Banners />}>
      {children}
    </Shell>
  );
}

function Banners() {
  const { shell, work } = useWords();
  const [, go] = useLocation();
  const isDemo = useKennel((s) => s.record === 'demo');
  const damage = useKennel((s) => s.damage.length);
  const fault = useKennel((s) => s.fault);
  const { isWaiting, take } = useAppUpdate();
  const hasOpenSession = useKennel((s) => s.dogs?.dogs.some((row) => row.openSession !== null) ?? false);
  const leave = async () => {
    await leaveDemo();
    go('/');
  };
  return (
    <>
      {isDemo && (
        <Notice action={<Button onClick={() => void leave()}>{shell.leaveDemo}</Button>}>
          {shell.demoBanner}
        </Notice>
      )}
      {fault !== null && <Notice tone="care">{work.fault(fault)}</Notice>}
      {damage > 0 && <Notice tone="care">{work.damage(damage)}</Notice>}
      <KeepingNews />
      <ListeningBar />
      <NotSavedBar />
      {isWaiting && !hasOpenSession && (
        <Notice action={<Button onClick={take}>{shell.takeNewVersion}</Button>}>{shell.newVersion}</Notice>
      )}
    </>
  );
}
