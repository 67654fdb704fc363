export * from './ask.ts';
export { ASK_RANGES, checkAsk, checkContext, EASY_CONTEXT, easyAsk } from './ask-range.ts';
export { DEMANDS, type DemandName, demandVector } from './demands.ts';
export { createAbilityFilter, isAbilitySnapshot, restoreAbilityFilter } from './filter.ts';
export * from './forecaster.ts';
export { type AskField, harderFields } from './harder-fields.ts';
export * from './leg.ts';
export { CAUSES, type Cause, type Counting, legWeight } from './leg-weight.ts';
export { type AbilityPriors, shippedPriors } from './priors.ts';
