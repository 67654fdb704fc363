import type { Tongue } from './tongue.ts';

/** What may interfere on a layout, with the figures that make it so. Things by the name they are shown with. */
export type ToldLayoutWarning =
  | {
      readonly code:
        | 'hazard-on-line'
        | 'hazard-near-line'
        | 'on-the-way'
        | 'beyond-in-line'
        | 'narrow-gap'
        | 'scent-across';
      readonly to: string;
      readonly thing: string;
      readonly gapDeg: number;
      readonly clearanceM: number;
      readonly downwindM?: number;
    }
  | { readonly code: 'passes-handler'; readonly to: string; readonly clearanceM: number }
  | { readonly code: 'longer-than-an-ask'; readonly to: string; readonly distanceM: number }
  | { readonly code: 'at-send-point'; readonly thing: string; readonly distanceM: number }
  | { readonly code: 'together'; readonly thing: string; readonly other: string; readonly distanceM: number }
  | { readonly code: 'send-apart'; readonly distanceM: number; readonly bearingDeg: number }
  | { readonly code: 'same-name'; readonly thing: string; readonly count: number }
  | { readonly code: 'wind-half-told'; readonly missing: 'windFromDeg' | 'windMPerS' }
  | { readonly code: 'no-line' };

/** Words of a measured layout. */
export function layoutWords(t: Tongue) {
  const degrees = (deg: number): string => `${t.number(deg)}°`;
  const unit = t.units === 'yards' ? 'yd' : 'm';

  const warning = (one: ToldLayoutWarning): string => {
    switch (one.code) {
      case 'hazard-on-line':
        return `Line to ${one.to}: ${one.thing} lies on it. Do not send; draw the line elsewhere.`;
      case 'hazard-near-line':
        return `Line to ${one.to}: ${one.thing} is ${t.length(one.clearanceM)} off it. A dog that drifts meets it.`;
      case 'on-the-way':
        return `Line to ${one.to}: ${one.thing} is ${t.length(one.clearanceM)} off it, on the way out. The dog may take that first.`;
      case 'beyond-in-line':
        return `Line to ${one.to}: ${one.thing} stands beyond it and in line, ${degrees(one.gapDeg)} off. The dog may run on to it.`;
      case 'narrow-gap':
        return `Line to ${one.to}: only ${degrees(one.gapDeg)} between it and ${one.thing}.`;
      case 'scent-across':
        return `Line to ${one.to}: the wind carries scent of ${one.thing} across it, from ${t.length(one.downwindM ?? 0)} upwind.`;
      case 'passes-handler':
        return `Line to ${one.to}: it passes you at ${t.length(one.clearanceM)}. The dog may come in to you.`;
      case 'longer-than-an-ask':
        return `Line to ${one.to}: ${t.length(one.distanceM)} is longer than any line that can be recorded.`;
      case 'at-send-point':
        return `${one.thing} lies at the send point.`;
      case 'together':
        return `${one.thing} and ${one.other} lie in one place.`;
      case 'send-apart':
        return `You stand ${t.length(one.distanceM)} from the send point, which lies at ${degrees(one.bearingDeg)} from you.`;
      case 'same-name':
        return `${t.number(one.count)} things are named ${one.thing}: their lines can’t be told apart.`;
      case 'wind-half-told':
        return one.missing === 'windFromDeg'
          ? 'How hard the wind blows is told, but not from where: no scent and no cross-wind is worked out.'
          : 'Where the wind comes from is told, but not how hard it blows: no scent and no cross-wind is worked out.';
      case 'no-line':
        return `No post and no ${t.dummy}: there is nothing to send the dog to.`;
    }
  };

  return {
    warning,
    /** A length for a table whose head names the unit. */
    measured: (lengthM: number): string => t.number(lengthM / t.unitM, 1),
    degrees: (deg: number): string => t.number(deg, 1),
    paces: (paces: number): string => t.number(paces),
    columns: {
      to: 'line to',
      distance: `distance, ${unit}`,
      bearing: 'bearing, °',
      paces: 'paces',
      nearest: 'nearest',
      clearance: `clearance, ${unit}`,
      gap: 'gap, °',
    },
    none: '-',
    noWarning: 'Nothing in the way, by these measures.',
    /** What was taken for granted. */
    taken: (paceM: number): string =>
      `Lines run from where you stand. Bearings are clockwise from the drawing’s north; a pace is ${t.number(paceM, 2)} ${unit === 'm' ? 'm' : 'metres'}. What counts as in the way is our judgement; walk the ground.`,
  };
}

export type LayoutWords = ReturnType<typeof layoutWords>;
