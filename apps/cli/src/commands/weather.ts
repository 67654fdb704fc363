import {
  apparentTemperatureC,
  type CareInput,
  careCautions,
  careLevel,
  heatIndexC,
  wbgtEstimateC,
  wetBulbC,
} from '@sedgeline/engine/weather';
import { words } from '@sedgeline/words';
import { EXIT } from '../cli-failure.ts';
import { measuredNumber } from '../measured-number.ts';
import { table } from '../table.ts';
import { type AddCommand, print } from './command.ts';

interface Options {
  readonly json?: boolean;
  readonly airC: number;
  readonly humidity: number;
  readonly windMps: number;
  readonly sun?: number;
  readonly ageMonths?: number;
  readonly minutesWeek?: number;
  readonly jumpsWeek?: number;
  readonly waterC?: number;
}

/** `weather --air-c C --humidity PCT`: what the air feels like, what it leaves of a session, and what to mind. */
export const addWeather: AddCommand = (program, terminal, finish) => {
  program
    .command('weather')
    .description('how the weather feels, how much work it leaves, and what to mind')
    .requiredOption('--air-c <c>', 'air temperature in shade', measuredNumber('degrees Celsius', -60, 60))
    .requiredOption('--humidity <pct>', 'relative humidity', measuredNumber('per cent', 0, 100))
    .option('--json', 'print one JSON document')
    .option('--wind-mps <w>', 'wind', measuredNumber('metres a second', 0, 60), 0)
    .option('--sun <share>', '0 shade or night to 1 full sun', measuredNumber('a share of full sun', 0, 1))
    .option('--age-months <n>', "the dog's age", measuredNumber('months', 0, 360))
    .option('--minutes-week <n>', 'minutes worked this week', measuredNumber('minutes', 0, 10_080))
    .option('--jumps-week <n>', 'jumps this week', measuredNumber('jumps', 0, 10_000))
    .option('--water-c <c>', 'water temperature', measuredNumber('degrees Celsius', -3, 45))
    .action((options: Options) => {
      const { care, weather } = words();
      const { airC, humidity: humidityPct, windMps: windMPerS, sun } = options;
      const input: CareInput = {
        airC,
        humidityPct,
        windMPerS,
        sun,
        ageMonths: options.ageMonths,
        minutesThisWeek: options.minutesWeek,
        jumpsThisWeek: options.jumpsWeek,
        waterC: options.waterC,
      };
      const felt = {
        heatIndexC: heatIndexC(airC, humidityPct),
        wetBulbC: wetBulbC(airC, humidityPct),
        wbgtC: wbgtEstimateC(airC, humidityPct, sun),
        level: careLevel(input),
        apparentC: apparentTemperatureC(airC, humidityPct, windMPerS),
      };
      const cautions = careCautions(input).map((one) => ({ ...one, sentence: care.caution(one) }));
      const taken = { airC, humidityPct, windMPerS, sun: sun ?? null };
      print(terminal, options, { ...felt, cautions, taken }, () =>
        [
          `${weather.level(felt.level)}\n\n`,
          table([weather.columns.what, weather.columns.figure], weather.rows(felt)),
          '\n',
          ...cautions.map(({ sentence }) => `${sentence}\n`),
          `\n${weather.taken(windMPerS, sun ?? null)}\n`,
        ].join(''),
      );
      finish(EXIT.done);
    });
};
