export type * from './record/training-record.ts';
export type * from './views/views.ts';
