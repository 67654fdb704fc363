export { bearingDegOf, gapDegAt } from './bearing.ts';
export type * from './layout.ts';
export {
  AT_HANDLER_M,
  isLineTo,
  type LayoutLine,
  layoutLines,
  type NearestThing,
  PACE_M,
  sendApart,
  thingsAtHandler,
} from './layout-lines.ts';
export {
  INTERFERENCE,
  type LayoutWarning,
  LINE_WARNING_CODES,
  type LineWarningCode,
  layoutWarnings,
} from './layout-warnings.ts';
export { clearanceToM, type LineOffset, lineOffset } from './line-offset.ts';
export { type GeoPoint, groundLine, type LocalPlane, localPlane } from './local-plane.ts';
export * from './plane.ts';
export type * from './rep-picture.ts';
export {
  FEATURE_CODES,
  type FeatureCode,
  STARTING_LAYOUT_CODES,
  STARTING_LAYOUTS,
  type StartingLayout,
  type StartingLayoutCode,
} from './starting-layouts/starting-layouts.ts';
export { type Fix, type SurveyedPlace, surveyedPlace } from './surveyed-place.ts';
export { scentAcrossM, type Wind, windAcrossMPerS, windOf } from './wind-on-line.ts';
