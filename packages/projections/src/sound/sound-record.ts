import type { OrderKey, SoundHeard, SoundJoined } from '@sedgeline/journal';

/** A sound of a session, as it stands: what was heard in it and which rep that belongs to. */
export interface SoundRecord {
  readonly sound: string;
  readonly session: string;
  readonly orderKey: OrderKey;
  readonly from: SoundHeard['from'];
  readonly name: string;
  readonly lengthS: number;
  readonly startsAtMs: number | null;
  readonly bytes: number | null;
  /** Of a sound that was kept on a device. */
  readonly sha256: string | null;
  readonly whistles: SoundHeard['whistles'];
  readonly clicks: SoundHeard['clicks'];
  readonly joins: SoundJoined['joins'];
}
