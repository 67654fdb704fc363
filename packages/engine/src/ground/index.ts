export type * from './layout.ts';
export * from './plane.ts';
export type * from './rep-picture.ts';
