import { askWords } from './ask.ts';
import { careWords } from './care.ts';
import { cautionWords } from './cautions.ts';
import { chanceWords } from './chances.ts';
import { changeWords } from './changes.ts';
import type { Dialect } from './dialect.ts';
import { failureWords } from './failures.ts';
import { filmFigureWords } from './film.ts';
import { layoutWords } from './layout.ts';
import { listenWords } from './listen.ts';
import { patternWords } from './patterns.ts';
import { pictureWords } from './picture.ts';
import { planWords } from './plan.ts';
import { reasonWords } from './reasons.ts';
import { ruleWords } from './rules.ts';
import { backWords } from './screens/back.ts';
import { dogWords } from './screens/dog.ts';
import { dogsWords } from './screens/dogs.ts';
import { filmWords } from './screens/film.ts';
import { groundWords } from './screens/ground.ts';
import { keepingWords } from './screens/keeping.ts';
import { listenScreenWords } from './screens/listen.ts';
import { planScreenWords } from './screens/plan-screen.ts';
import { progressWords } from './screens/progress.ts';
import { proofingWords } from './screens/proofing.ts';
import { seasonScreenWords } from './screens/season-screen.ts';
import { setupWords } from './screens/setup.ts';
import { shellWords } from './screens/shell.ts';
import { whyScreenWords } from './screens/why.ts';
import { workWords } from './screens/work.ts';
import { seasonWords } from './season.ts';
import { stepWords } from './steps.ts';
import { timeWords } from './time.ts';
import { tongue, type Units } from './tongue.ts';
import { tradeWords } from './trade.ts';
import { weatherWords } from './weather.ts';
import { whistleWords } from './whistle.ts';
import { whyWords } from './why.ts';

/**
 * The one catalogue: every sentence the program says, in a dialect of English and a unit of length. Pure and cheap;
 * keep the result while dialect and units stay the same, so that screens that depend on it need not render again.
 */
export function words(dialect: Dialect = 'en-GB', units: Units = 'metres') {
  const t = tongue(dialect, units);
  const trade = tradeWords(t);
  const chances = chanceWords();
  const changes = changeWords(t, trade);
  const steps = stepWords();
  const ask = askWords(t, trade);
  const time = timeWords(t);
  const cautions = cautionWords(t);
  const why = whyWords(t, trade, chances, changes);
  const filmFigures = filmFigureWords(t, trade, ask, time);
  return {
    tongue: t,
    trade,
    ask,
    steps,
    chances,
    changes,
    reasons: reasonWords(t, trade, chances, changes),
    rules: ruleWords(t, trade),
    why,
    failures: failureWords(),
    patterns: patternWords(t),
    layout: layoutWords(t),
    picture: pictureWords(t),
    plan: planWords(t),
    planScreen: planScreenWords(t, trade, ask, steps),
    season: seasonWords(t, trade, chances, time, why),
    seasonScreen: seasonScreenWords(t, trade, ask, chances, time),
    time,
    cautions,
    care: careWords(t, cautions),
    weather: weatherWords(t),
    whistle: whistleWords(t),
    listen: listenWords(t),
    listenScreen: listenScreenWords(t, trade),
    shell: shellWords(),
    back: backWords(t, time, trade),
    keeping: keepingWords(t),
    dogs: dogsWords(t),
    dog: dogWords(t),
    film: filmWords(t, time, filmFigures),
    filmFigures,
    ground: groundWords(t),
    progress: progressWords(t, ask, chances, time),
    proofing: proofingWords(t, trade, chances, time),
    setup: setupWords(t),
    work: workWords(t, trade),
    whySheet: whyScreenWords(t, steps),
  };
}

export type Words = ReturnType<typeof words>;
