export * from './ask.ts';
export * from './leg.ts';
export * from './forecaster.ts';
