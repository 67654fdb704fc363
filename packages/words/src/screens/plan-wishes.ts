import type { Tongue } from '../tongue.ts';

/** Words of what a handler wants of a plan: minutes, ground, kit, weather, what to work on. */
export function planWishWords(t: Tongue) {
  const things = (posts: number, dummies: number): string =>
    posts + dummies === 0
      ? 'nothing to put out'
      : t.list([t.count(dummies, t.dummy, t.dummies), t.count(posts, 'post', 'posts')]);
  return {
    wish: {
      title: 'What the plan is for',
      minutes: 'Minutes',
      minutesUnit: 'min',
      less: (what: string): string => `${what}: less`,
      more: (what: string): string => `${what}: more`,
      change: 'Where, kit, weather',
      ground: 'Where?',
      groundNotSaid: 'Not said',
      newGround: 'A new ground',
      groundName: 'Name of the new ground',
      drawings: 'What is drawn of it',
      kit: 'What there is to put out',
      kitFree: 'As much as it takes',
      kitCounted: 'Count it',
      posts: 'Posts',
      dummies: t.dummies.charAt(0).toUpperCase() + t.dummies.slice(1),
      focus: 'What to work on?',
      anything: 'Whatever is due',
      weather: 'The weather, if you know it',
      airC: 'Air, °C',
      humidity: 'Humidity, %',
      wind: `Wind, ${t.windUnit.name}`,
      windFrom: 'Wind from, °',
      notGood: (least: number, most: number): string =>
        `A number from ${t.number(least)} to ${t.number(most)}, or nothing.`,
    },
    /** The wishes in one line: "Home paddock · 4 dummies and 2 posts · 14 °C, wind 3 m/s". */
    wished: (
      ground: string | null,
      kit: { readonly posts: number; readonly dummies: number } | undefined,
      weather: { readonly airC?: number | undefined; readonly windMPerS?: number | undefined } | undefined,
      focus: string | null,
    ): string =>
      [
        ground ?? 'Ground not said',
        kit === undefined ? 'any kit' : things(kit.posts, kit.dummies),
        ...(weather?.airC === undefined ? [] : [`${t.number(weather.airC)} °C`]),
        ...(weather?.windMPerS === undefined ? [] : [`wind ${t.wind(weather.windMPerS)}`]),
        ...(focus === null ? [] : [focus.toLowerCase()]),
      ].join(' · '),
  };
}
