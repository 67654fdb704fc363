export { apparentTemperatureC } from './apparent-temperature.ts';
export {
  CARE_CODES,
  type CareCaution,
  type CareCode,
  type CareInput,
  careCautions,
} from './care-cautions.ts';
export {
  CARE_LEVELS,
  type CareLevel,
  careLevel,
  coldLevel,
  type Heat,
  heatLevel,
  heatOf,
  isHot,
  type KnownWeather,
} from './care-level.ts';
export { CARE_JUDGED, CARE_LIMITS } from './care-limits.ts';
export { heatIndexC } from './heat-index.ts';
export { wbgtEstimateC } from './wbgt-estimate.ts';
export { wetBulbC } from './wet-bulb.ts';
