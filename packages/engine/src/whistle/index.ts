export * from './stop-point.ts';
