export type * from './fact.ts';
export type * from './store/store.ts';
