import type { Tongue } from './tongue.ts';

/** What to mind of a stop, with its figures. */
export type ToldWhistleCaution =
  | { readonly code: 'too-late'; readonly haltsAtM: number }
  | { readonly code: 'decide-before-send'; readonly beforeS: number }
  | { readonly code: 'not-heard'; readonly missingDb: number }
  | { readonly code: 'thin-margin'; readonly marginDb: number }
  | { readonly code: 'wind'; readonly windMPerS: number }
  | { readonly code: 'ears'; readonly levelDb: number; readonly limitDb: number; readonly allowedS: number };

/** A stop, as far as it is told. */
export interface ToldStop {
  readonly decideWhenDogAtM: number;
  readonly blowWhenDogAtM: number;
  readonly dogHearsAtM: number;
  readonly dogHaltsAtM: number;
  readonly overrunM: number;
  readonly soundDelayS: number;
  readonly overrunInterval90M: readonly [number, number];
  readonly haltInterval90M: readonly [number, number];
  readonly levelAtDogDb: number;
  readonly marginDb: number;
  readonly carriesToM: number;
  /** The farthest that is looked at: from there on "more than". */
  readonly farthestM: number;
}

/** What a stop was worked out with. */
export interface ToldStopConditions {
  readonly runSpeedMPerS: number;
  readonly accelerationMPerS2: number;
  readonly brakingMPerS2: number;
  readonly reactionHandlerS: number;
  readonly reactionDogS: number;
  readonly airC: number;
  readonly humidityPct: number;
  readonly windMPerS: number;
  readonly levelDb: number;
  readonly noiseDb: number;
  readonly pitchHz: number;
  readonly cover: number;
  /** How many measured reactions the dog's figure stands on. */
  readonly measured: number;
}

/** Words of a stop on the whistle. */
export function whistleWords(t: Tongue) {
  const unit = t.units === 'yards' ? 'yd' : 'm';
  const place = (lengthM: number): string => `${t.number(lengthM / t.unitM, 1)} ${unit}`;
  const range = ([low, high]: readonly [number, number]): string =>
    `${t.number(low / t.unitM, 1)} to ${place(high)}`;
  const speed = (mPerS: number): string => `${t.number(mPerS / t.unitM, 1)} ${unit}/s`;
  const gain = (mPerS2: number): string => `${t.number(mPerS2 / t.unitM, 1)} ${unit}/s²`;
  const minutes = (s: number): string =>
    s >= 90 ? t.count(Math.round(s / 60), 'minute', 'minutes') : t.count(Math.round(s), 'second', 'seconds');

  const caution = (one: ToldWhistleCaution): string => {
    switch (one.code) {
      case 'too-late':
        return `Too soon: blown at the send itself, the dog still halts at ${place(one.haltsAtM)}.`;
      case 'decide-before-send':
        return `You have to decide ${t.number(one.beforeS, 1)} s before the send: settle it before you send.`;
      case 'not-heard':
        return `The whistle is ${t.number(one.missingDb)} dB short of being heard there, by these figures. Go nearer, or wait for the noise to drop.`;
      case 'thin-margin':
        return `Only ${t.number(one.marginDb)} dB over what a listening dog can just make out: a dog with its nose down may miss it, and that miss is not the dog’s.`;
      case 'wind':
        return `Wind of ${t.wind(one.windMPerS)}: it carries the whistle down wind and lifts it over a dog up wind, which may not hear it at all. No figure here has the wind in it.`;
      case 'ears':
        return `${t.number(one.levelDb)} dB at 1 m: a person that near has a day’s noise in ${minutes(one.allowedS)} of blowing, by the rule for work (${t.number(one.limitDb)} dB for 8 hours), and your own ear is nearer. There is no such rule for dogs: never blow beside one.`;
    }
  };

  return {
    caution,
    /** Rows of the table: what, and its figure. */
    rows: (stop: ToldStop): readonly (readonly [string, string])[] => [
      ['decide when the dog is at', place(stop.decideWhenDogAtM)],
      ['blow when the dog is at', place(stop.blowWhenDogAtM)],
      ['the dog hears it at', place(stop.dogHearsAtM)],
      ['the dog halts at', place(stop.dogHaltsAtM)],
      ['9 in 10 halt at', range(stop.haltInterval90M)],
      ['it runs on by', place(stop.overrunM)],
      ['9 in 10 run on by', range(stop.overrunInterval90M)],
      ['sound is on its way for', `${t.number(stop.soundDelayS, 2)} s`],
      ['level at the dog', `${t.number(stop.levelAtDogDb)} dB`],
      ['over what it can just hear', `${t.number(stop.marginDb)} dB`],
      [
        'carries to about',
        stop.carriesToM >= stop.farthestM
          ? `more than ${t.length(stop.farthestM)}`
          : t.length(stop.carriesToM),
      ],
    ],
    columns: { what: 'stop', figure: 'figure' },
    /** Everything that was taken, told or not. */
    taken: (c: ToldStopConditions): string => {
      const dog = `dog ${t.number(c.reactionDogS, 2)} s${c.measured > 0 ? ` from ${t.count(c.measured, 'measured reaction', 'measured reactions')}` : ''}`;
      return [
        `Worked out with: speed ${speed(c.runSpeedMPerS)}, getting going ${gain(c.accelerationMPerS2)}, braking ${gain(c.brakingMPerS2)};`,
        `reaction of the handler ${t.number(c.reactionHandlerS, 2)} s, of the ${dog};`,
        `${t.number(c.airC)} °C, ${t.number(c.humidityPct)} % humidity, ${c.windMPerS === 0 ? 'no wind' : `wind ${t.wind(c.windMPerS)}`};`,
        `whistle ${t.number(c.levelDb)} dB at 1 m and ${t.number(c.pitchHz)} Hz, noise ${t.number(c.noiseDb)} dB in that band, cover ${t.number(c.cover, 1)}.`,
        'You stand at the send point. No braking figure of a retriever is published; what you did not tell is our judgement.',
      ].join(' ');
    },
  };
}

export type WhistleWords = ReturnType<typeof whistleWords>;
