export type * from './layout.ts';
export type * from './rep-picture.ts';
