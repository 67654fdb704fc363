import { openSnapshot } from '../ability/filter-snapshot.ts';
import { correctForecast, restoreAbilityFilter } from '../ability/index.ts';
import type { Random } from '../numeric/index.ts';
import { dogBelief } from './dog-belief.ts';
import { proofings } from './first-to-proof.ts';
import { FormAverage } from './form-average.ts';
import { GoalTally } from './goal-tally.ts';
import type { GoalChance, SeasonForecast, SeasonQuestion, SeasonWeek } from './season-forecast.ts';
import { checkGoal, SEASON } from './season-goal.ts';
import { plainWanted, shownChance } from './shown-chance.ts';
import { TwinFutures } from './twin-futures.ts';

/**
 * When will a dog reach a goal? Particles: today's truth is drawn from the filter, the sessions of the weeks to come are played,
 * ability moves by the fading gain, as much of it
 * as the dog's own record speaks for, and the random walk (Gardner1985, Durbin2012), and at the end of each week the asks are looked
 * at. Readings of the contract:
 * - an ask's chance in a future is that of good, asked fresh on known ground, the day's form unknown (averaged out, as in `chance`);
 * - a goal is reached in the first week, 0 being now, in which every ask's chance stands at its wanted one or above; it stays reached;
 * - the goal's one `chance` is that all its asks are good on the same day, form shared; with one ask it is, now, to the bit what
 *   `chance` states; `interval90` are the 5 % and 95 % quantiles over futures and the form of the day;
 * - `first`: what the goal's chance now would gain if one factor (its weight at one skill) cost the dog nothing; in chance, only
 *   gains above 0. Age and the moment are no factors;
 * - a future knows the truth, so what a record of the weeks to come would teach us plays no part; nor does which asks are
 *   practised: in the model a session at a skill is worth the same whatever is asked.
 * The recalibration acts on the goal's chance, and moves what is wanted of each ask the other way.
 * @throws RangeError for no ask, a number outside its range; TypeError for a snapshot that is none with these priors
 */
export function forecastGoal(question: SeasonQuestion, random: Random): SeasonForecast {
  const {
    snapshot,
    priors,
    recalibration,
    dog,
    asks,
    atMs,
    work,
    weeks,
    futures = SEASON.futures,
  } = question;
  checkGoal(asks, weeks, futures);
  const belief = dogBelief(openSnapshot(snapshot, priors), priors, dog, asks, atMs);
  const single = proofings(asks);
  const tally = new GoalTally(
    new FormAverage(priors.formSd, asks.length),
    asks.map(({ wanted }) => plainWanted(wanted, recalibration)),
    weeks,
    futures,
    single.map(({ skill, demands }) => ({
      skill: belief.skills.findIndex((one) => one.skill === skill),
      demands,
    })),
  );
  const pair = new TwinFutures(belief, asks, priors, work, random);
  for (let n = 0; n < futures; n += 2) playPair(pair, tally, n, weeks, priors.formSd, random);

  const shown = (plain: GoalChance) => shownChance(plain, recalibration);
  const before = tally.chance(0);
  const now = asks.length === 1 ? asStated(question) : shown(before);
  let ready = 0;
  const stated = Array.from({ length: weeks + 1 }, (_, week): SeasonWeek => {
    ready += tally.reachedIn[week]!;
    return { week, probabilityReady: ready / futures, ...(week === 0 ? now : shown(tally.chance(week))) };
  });
  const by = (share: number) => stated.find((one) => one.probabilityReady >= share)?.week ?? null;
  const first = single.map(({ skill, factor }, k) => {
    const without = shown({ ...before, chance: tally.chanceWithout(k) });
    return { skill, factor, gain: without.chance - shown(before).chance };
  });
  return {
    now,
    weeks: stated,
    readyInWeeks: { p10: by(0.1), p50: by(0.5), p90: by(0.9) },
    first: first.filter(({ gain }) => gain > 0).sort((a, b) => b.gain - a.gain),
  };
}

/** Plays two futures, numbers `n` and `n + 1`, from today to the horizon. */
function playPair(
  pair: TwinFutures,
  tally: GoalTally,
  n: number,
  weeks: number,
  formSd: number,
  random: Random,
): void {
  const [one, other] = pair.twins;
  let oneReached = false;
  let otherReached = false;
  pair.begin(weeks);
  for (let week = 0; week <= weeks; week++) {
    if (week > 0) pair.playTo(week);
    const form = formSd * random.normal();
    if (tally.look(pair, one, n, week, form) && !oneReached) {
      oneReached = true;
      tally.reachedIn[week]! += 1;
    }
    if (tally.look(pair, other, n + 1, week, -form) && !otherReached) {
      otherReached = true;
      tally.reachedIn[week]! += 1;
    }
  }
}

/** The one ask as the filter itself states it. */
function asStated({ snapshot, priors, recalibration, dog, asks, atMs }: SeasonQuestion): GoalChance {
  const { skill, ask, context } = asks[0]!;
  const filter = restoreAbilityFilter(snapshot, priors);
  const plain = filter.forecast({ dog, skill, session: null, atMs, ask, context });
  const { chance, interval90 } = recalibration === null ? plain : correctForecast(plain, recalibration);
  return { chance: chance.good, interval90: interval90.good };
}
