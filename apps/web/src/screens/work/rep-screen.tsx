import { useMemo, useState } from 'react';
import { useLocation } from 'wouter';
import type { WorkScreen } from '../../workers/kennel-calls.ts';
import { useWhySheet } from '../why/use-why-sheet.tsx';
import { AfterStrip } from './after-strip.tsx';
import { LastRepRow, spokenRep } from './last-rep-row.tsx';
import { LegChance } from './leg-chance.tsx';
import { LegsRow } from './legs-row.tsx';
import { MorePanel } from './more-panel.tsx';
import { OutcomePad, type WideKey } from './outcome-pad.tsx';
import { RepFace } from './rep-face.tsx';
import { SessionLog } from './session-log.tsx';
import { nextInTurn } from './turn-bar.tsx';
import { TurnRow } from './turn-row.tsx';
import { useIsAcross } from './use-card-size.ts';
import { useCameFrom } from './use-turn.ts';
import type { WorkTaps } from './use-work-taps.ts';
import { useWorkKeys } from './work-keys.ts';

interface RepScreenProps {
  readonly screen: WorkScreen;
  readonly isRough: boolean;
  readonly taps: WorkTaps;
  readonly onPocket: () => void;
}

/** One rep: the field card and why, and the pad that grades it. */
export function RepScreen({ screen, isRough, taps, onPocket }: RepScreenProps) {
  const [isMore, setMore] = useState(false);
  const [, go] = useLocation();
  const isAcross = useIsAcross();
  const hasComeOn = useCameFrom((s) => s.session !== null);
  const why = useWhySheet();
  const { openWhy } = why;
  const { view, chosen, after } = screen;
  const rep = chosen?.rep ?? view.asked;
  const picture = chosen?.picture ?? view.picture;
  const graded = view.inHand?.graded ?? [];
  const wide: WideKey =
    graded.at(-1)?.grade === 'missed' ? 'ended' : graded.length > 0 ? 'rest-good' : 'all-good';
  const lastRep = after?.rep ?? view.done.at(-1)?.rep ?? null;
  const spoken = useMemo(() => spokenRep({ view, chosen }), [view, chosen]);
  const now = useMemo(
    () => ({
      openPocket: onPocket,
      nextDog: () => {
        const next = view.inTurn === null ? null : nextInTurn(view.inTurn, view.session);
        if (next !== null) go(`/work/${next.session}`, { replace: true });
      },
      gotIt: () => {
        if (spoken?.legs.some(({ grade }) => grade === 'missed')) taps.gotIt(spoken.rep, !spoken.gotItAnyway);
      },
      taps,
      wide,
      after,
      pressWide: wide === 'ended' ? taps.ended : taps.restGood,
      openMore: () => setMore(true),
      openWhy: () => openWhy(lastRep),
    }),
    [taps, wide, after, lastRep, openWhy, onPocket, view, spoken, go],
  );
  useWorkKeys(now, !isMore && !why.isOpen && !isRough && rep !== null);
  const leg = rep?.legs[graded.length];
  if (rep === null || picture === null || leg === undefined) return null;
  const between = (
    <div className="work-between">
      {after === null ? (
        <LegChance leg={leg} />
      ) : (
        <AfterStrip after={after} onCause={taps.cause} onExpectation={taps.expectation} onWhy={openWhy} />
      )}
      {spoken !== null && <LastRepRow spoken={spoken} taps={taps} />}
    </div>
  );
  return (
    <>
      <RepFace
        rep={rep}
        picture={picture}
        dogName={view.dogName}
        isChosen={chosen !== null && view.inHand === null}
        course={view.next.plan ?? null}
        onAsSuggested={() => taps.send({ do: 'as-suggested' })}
      >
        {isAcross && between}
      </RepFace>
      <div className="work-desk" inert={isMore}>
        <SessionLog done={view.done} onWhy={isRough ? null : openWhy} />
        {!isAcross && between}
        <LegsRow legs={rep.legs} graded={graded} />
        <OutcomePad
          skill={leg.skill}
          wide={wide}
          isOff={isRough}
          onGrade={taps.grade}
          onWide={now.pressWide}
        />
        <TurnRow
          canUndo={view.undo !== null || hasComeOn}
          canTurn={view.inHand === null}
          isClean={rep.clean}
          onUndo={taps.undo}
          onTurn={taps.turn}
          onMore={() => setMore(true)}
        />
      </div>
      {isMore && (
        <MorePanel
          screen={screen}
          rep={rep}
          taps={taps}
          onWhy={openWhy}
          onPocket={onPocket}
          onClose={() => setMore(false)}
        />
      )}
      {why.sheet}
    </>
  );
}
