/**
 * The one home of the figures for age and heat (contract, "A plan"): cautious, no safe limits, and validated for no dog. The vet's word
 * goes first.
 */
export const CARE_LIMITS = {
  /** Hot: at most so many reps and minutes, or none. */
  hotC: 30,
  closeC: 27,
  closeHumidityPct: 70,
  hotReps: 8,
  hotMinutes: 10,
  /** Under this age no obstacle of so much and no way so long. */
  grownMonths: 12,
  youngLineM: 80,
  youngObstacle: 2,
  /** Under this age no more than so many minutes. */
  puppyMonths: 6,
  puppyMinutes: 12,
} as const;

/** The figures beyond the contract's: our judgement, 2026, common practice, no source where none is named. */
export const CARE_JUDGED = {
  /** From here a mild day is worth a word. */
  warmC: 24,
  /** From here on no session at all. */
  tooHotC: 33,
  tooCloseC: 30,
  tooCloseHumidityPct: 70,
  /** Steps of the heat index for people: caution, extreme caution, danger (the weather service's 80, 90 and 103 F). */
  indexCareC: 26.7,
  indexShortC: 32.2,
  indexStopC: 39.4,
  /** Full sun adds up to this to the heat index (Rothfusz1990's service: 15 F). */
  sunAddsC: 8.3,
  /** Dogs were ill from heat on days as mild as this, by the median (Hall2022). */
  mildC: 17,
  /** Apparent temperature from which cold is worth a word, and from which work is kept short. */
  coldC: 0,
  veryColdC: -12,
  coldWaterC: 10,
  oldMonths: 96,
  weekMinutes: 150,
  weekJumps: 40,
} as const;
