import type { KennelOfFacts } from '../kennel-of-facts.ts';
import type { WhyLegView, WhyView } from '../views/why-view.ts';
import { whyInKennel } from '../why/why-of-rep.ts';

/** The answer of `why`: the contract's fields, and beside them what else the screen shows. `null` for an unknown rep. */
export function whyAnswer(kennel: KennelOfFacts, rep: string) {
  const view = whyInKennel(kennel, rep);
  return view === null ? null : answerOf(view);
}

function answerOf(view: WhyView) {
  return {
    rep: view.rep,
    dog: view.dog,
    dogName: view.dogName,
    session: view.session,
    repNumber: view.repNumber,
    at: new Date(view.atMs).toISOString(),
    legs: view.legs.map(legOf),
    form: view.form,
  };
}

function legOf({ leg, skill, ask, grade, cause, step, chanceBefore, interval90, verdict }: WhyLegView) {
  return {
    leg,
    skill,
    ask,
    grade,
    ...(cause === null ? {} : { cause }),
    stretch: step?.stretch.mean ?? null,
    stretchSd: step?.stretch.sd ?? null,
    since: step === null ? null : { rep: step.since.rep, leg: step.since.leg },
    changed: step?.changed ?? [],
    chanceAtBase: step?.chanceAtBase ?? null,
    chanceBefore,
    interval90: { atBase: step?.intervalAtBase90 ?? null, before: interval90 },
    odd: step?.odd ?? null,
    sureness: step?.sureness ?? null,
    verdict,
  };
}
