export * from './demo-kennel.ts';
