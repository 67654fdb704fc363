import type { WellDone } from '../../ability/index.ts';
import type { LaidLeg } from '../picture/laid-leg.ts';

/** A leg that went well, with the whole chain of its rep as it was asked. */
export interface Success extends WellDone {
  readonly asked: readonly LaidLeg[];
}
