export type * from './record/training-record.ts';
export type * from './views/views.ts';
export type * from './kennel.ts';
export type * from './taps.ts';
