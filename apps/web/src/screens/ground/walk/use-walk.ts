import { type SurveyedPlace, surveyedPlace } from '@sedgeline/engine/ground';
import type { WalkFault } from '@sedgeline/words';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { type PlaceFix, watchPlace } from '../../../devices/watch-place.ts';
import { ROUGHEST_M, standingFixes } from './standing-fixes.ts';

/** Where the device is, while it is followed. */
export interface Walk {
  readonly isOn: boolean;
  readonly fault: WalkFault | null;
  /** What the last reading states of itself. */
  readonly accuracyM: number | null;
  readonly place: SurveyedPlace | null;
  readonly hasMoved: boolean;
  start(): void;
  stop(): void;
}

interface Readings {
  readonly fixes: readonly PlaceFix[];
  readonly accuracyM: number | null;
  readonly hasMoved: boolean;
}

const NONE: Readings = { fixes: [], accuracyM: null, hasMoved: false };

/** Follows where the device is from `start` to `stop`, and averages while it stands still. */
export function useWalk(): Walk {
  const [isOn, setOn] = useState(false);
  const [fault, setFault] = useState<WalkFault | null>(null);
  const [readings, setReadings] = useState(NONE);
  const stopWatching = useRef<(() => void) | null>(null);
  const stop = useCallback(() => {
    stopWatching.current?.();
    stopWatching.current = null;
    setOn(false);
    setReadings(NONE);
  }, []);
  const start = useCallback(() => {
    stopWatching.current?.();
    setFault(null);
    setReadings(NONE);
    setOn(true);
    stopWatching.current = watchPlace(
      (fix) => {
        setFault(null);
        setReadings(({ fixes }) => {
          const now = standingFixes(fixes, fix);
          return { fixes: now, accuracyM: fix.accuracyM, hasMoved: fixes.length > 1 && now.length === 1 };
        });
      },
      (failure) => {
        setFault(failure);
        if (failure !== 'no-signal') setOn(false);
      },
    );
  }, []);
  useEffect(() => stop, [stop]);
  const place = useMemo(() => surveyedPlace(readings.fixes), [readings.fixes]);
  const isRough = readings.accuracyM !== null && readings.accuracyM > ROUGHEST_M;
  return { isOn, fault: fault ?? (isRough ? 'no-signal' : null), ...readings, place, start, stop };
}
