export type { Caution } from './cautions.ts';
export { type FailureWords, STORE_FAILURE_CODES, type StoreFailureCode } from './failures.ts';
export type { PictureWords } from './picture.ts';
export { REASON_CODES, type Reason, type ReasonCode } from './reasons.ts';
export type { FieldFault } from './screens/dogs.ts';
export type { StepSize } from './steps.ts';
export type { Dialect, Units } from './tongue.ts';
export { type Words, words } from './words.ts';
