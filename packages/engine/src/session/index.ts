export * from './next-answer.ts';
