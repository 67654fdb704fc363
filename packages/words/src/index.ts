export type { ToldCareCaution } from './care.ts';
export type { Caution } from './cautions.ts';
export type { Dialect } from './dialect.ts';
export { type FailureWords, STORE_FAILURE_CODES, type StoreFailureCode } from './failures.ts';
export { FILM_MARK_CODES, type FilmMarkName, type ToldFigures, type ToldFilm } from './film.ts';
export type { ToldLayoutWarning } from './layout.ts';
export type { ToldSoundNote, ToldSoundProblem } from './listen.ts';
export { type FoundPattern, PATTERN_CODES, type PatternCode } from './patterns.ts';
export type { PictureWords } from './picture.ts';
export { REASON_CODES, type Reason, type ReasonCode } from './reasons.ts';
export {
  RULE_MEND_CODES,
  RULE_NAMES,
  RULE_WHY_CODES,
  type RuleMendCode,
  type RuleName,
  type RuleVerdict as JudgedRule,
  type RuleWhyCode,
} from './rule-codes.ts';
export type { FieldFault } from './screens/dogs.ts';
export type { FilmFault, FilmPlaceFrom } from './screens/film.ts';
export type { GroundFault } from './screens/ground.ts';
export type { PlaceFault } from './screens/ground-editor.ts';
export type { WalkFault } from './screens/ground-walk.ts';
export type { BroughtBack } from './screens/keeping.ts';
export type { ToldFileFault } from './screens/listen.ts';
export type { ToldChange } from './screens/rep-history.ts';
export type { VoiceFault } from './screens/voice.ts';
export type { StepSize } from './steps.ts';
export type { Units } from './tongue.ts';
export type { ToldWeather } from './weather.ts';
export type { ToldStop, ToldStopConditions, ToldWhistleCaution } from './whistle.ts';
export { type ExplainedLeg, VERDICT_CODES, type VerdictCode } from './why.ts';
export { FACTOR_CODES, type FactorCode } from './why-factors.ts';
export { type Words, words } from './words.ts';
