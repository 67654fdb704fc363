import { drawLayout, fitGround, sayLayout, svgText } from '@sedgeline/drawing';
import { type Layout, type LayoutLine, layoutLines, layoutWarnings, PACE_M } from '@sedgeline/engine/ground';
import { type ToldLayoutWarning, type Words, words } from '@sedgeline/words';
import { EXIT } from '../cli-failure.ts';
import { measuredNumber } from '../measured-number.ts';
import { readLayout } from '../read-layout.ts';
import { table } from '../table.ts';
import { type AddCommand, print } from './command.ts';

interface Options {
  readonly json?: boolean;
  readonly pace: number;
  readonly svg?: string;
}

/** `layout FILE`: distances, bearings, paces and clearances of a drawing, what may interfere, and the drawing itself. */
export const addLayout: AddCommand = (program, terminal, finish) => {
  program
    .command('layout')
    .description('measure a drawn layout: lines, clearances, and what may interfere')
    .argument('<file>', 'JSON file with the body of a layout-drawn fact, - for standard input')
    .option('--json', 'print one JSON document')
    .option('--pace <metres>', 'how long a pace is', measuredNumber('metres', 0.3, 1.5), PACE_M)
    .option('--svg <out>', 'draw it to a new SVG file, the way out up')
    .action((file: string, options: Options) => {
      const layout = readLayout(terminal, file);
      const catalogue = words();
      const lines = layoutLines(layout, options.pace);
      const warnings = layoutWarnings(layout).map((warning) => ({
        ...warning,
        sentence: catalogue.layout.warning(named(layout, warning)),
      }));
      const answer = { lines, warnings, paceM: options.pace };
      if (options.svg !== undefined) terminal.writeNewFile(options.svg, drawn(layout, catalogue));
      print(terminal, options, answer, () =>
        page(
          layout,
          lines,
          warnings.map(({ sentence }) => sentence),
          options.pace,
          catalogue,
        ),
      );
      finish(EXIT.done);
    });
};

/** Size of a drawing to be printed or put into a page: half a sheet of A4, landscape. */
const DRAWN_BOX = { width: 720, height: 540, labels: true } as const;

function drawn(layout: Layout, { picture, ground }: Words): string {
  const drawing = drawLayout(layout, fitGround(layout, DRAWN_BOX, 'send'), DRAWN_BOX, picture);
  return svgText(drawing, { title: ground.picture, desc: sayLayout(layout, picture) });
}

/** What a thing is called: its label, or else its id. */
function nameOf({ things }: Layout, id: string): string {
  return things.find(({ thing }) => thing === id)?.label ?? id;
}

/** The warning with the names that things are shown by; things of one name are told by that name. */
function named(layout: Layout, warning: ToldLayoutWarning): ToldLayoutWarning {
  if (warning.code === 'same-name') return warning;
  return {
    ...warning,
    ...('to' in warning ? { to: nameOf(layout, warning.to) } : {}),
    ...('thing' in warning ? { thing: nameOf(layout, warning.thing) } : {}),
    ...('other' in warning ? { other: nameOf(layout, warning.other) } : {}),
  };
}

function page(
  layout: Layout,
  lines: readonly LayoutLine[],
  sentences: readonly string[],
  paceM: number,
  { layout: say }: Words,
): string {
  const { columns } = say;
  const row = ({ to, distanceM, bearingDeg, paces, nearest }: LayoutLine) => [
    nameOf(layout, to),
    say.measured(distanceM),
    say.degrees(bearingDeg),
    say.paces(paces),
    ...(nearest === null
      ? [say.none, say.none, say.none]
      : [nameOf(layout, nearest.thing), say.measured(nearest.clearanceM), say.degrees(nearest.gapDeg)]),
  ];
  const head = [
    columns.to,
    columns.distance,
    columns.bearing,
    columns.paces,
    columns.nearest,
    columns.clearance,
    columns.gap,
  ];
  const measured = lines.length === 0 ? '' : `${table(head, lines.map(row))}\n`;
  const told = sentences.length === 0 ? [say.noWarning] : sentences;
  return `${measured}${told.join('\n')}\n\n${say.taken(paceM)}\n`;
}
