/** One reading of where the device is. */
export interface PlaceFix {
  readonly latDeg: number;
  readonly lonDeg: number;
  readonly accuracyM: number;
  readonly atMs: number;
  /** How fast the device moves, where it says so. */
  readonly speedMPerS: number | null;
}

export type PlaceFailure = 'refused' | 'no-signal' | 'none';

/** A place older than this is not taken, and one that takes longer is told as no signal; milliseconds. */
const OPTIONS = { enableHighAccuracy: true, maximumAge: 1000, timeout: 20_000 } as const;

/** Follows where the device is until the function that comes back is called. Fails again and again while there is no signal. */
export function watchPlace(
  onFix: (fix: PlaceFix) => void,
  onFailure: (failure: PlaceFailure) => void,
): () => void {
  if (!('geolocation' in navigator)) {
    onFailure('none');
    return () => undefined;
  }
  const id = navigator.geolocation.watchPosition(
    ({ coords, timestamp }) =>
      onFix({
        latDeg: coords.latitude,
        lonDeg: coords.longitude,
        accuracyM: coords.accuracy,
        atMs: timestamp,
        speedMPerS: coords.speed,
      }),
    (error) => onFailure(error.code === error.PERMISSION_DENIED ? 'refused' : 'no-signal'),
    OPTIONS,
  );
  return () => navigator.geolocation.clearWatch(id);
}
