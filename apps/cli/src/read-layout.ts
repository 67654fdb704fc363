import { AT_HANDLER_M, type Layout, thingsAtHandler } from '@sedgeline/engine/ground';
import { factProblems, type LayoutDrawn } from '@sedgeline/journal';
import { CliFailure, EXIT } from './cli-failure.ts';
import type { Terminal } from './terminal.ts';

/** A moment that stands in the envelope of a drawing that is not a fact yet; nothing reads it. */
const ANY_MOMENT = '2000-01-01T00:00:00Z';

/**
 * A drawing from a file: the body of a `layout-drawn` fact, whose `layout` (its name in a journal) may be left out.
 * @throws CliFailure (5) for a file that can't be read, (3) naming the field that is not good or the thing that lies at
 * the handler
 */
export function readLayout(terminal: Terminal, file: string): Layout {
  const body = readObject(terminal, file);
  // The journal's own check of a fact; its paths begin with the envelope's `body`, which the file does not have.
  const fact = { id: file, kind: 'layout-drawn', at: ANY_MOMENT, body: { layout: 'drawing', ...body } };
  const problem = factProblems(fact)[0];
  if (problem !== undefined) {
    const { code, field, message } = problem;
    const own = (text: string) => text.replace(/^body\./, '');
    throw new CliFailure({ code, message: own(message), exit: EXIT.badInput, file, field: own(field) });
  }
  const layout: Layout = body as LayoutDrawn;
  const atHandler = thingsAtHandler(layout)[0];
  if (atHandler === undefined) return layout;
  throw new CliFailure({
    code: 'THING_AT_HANDLER',
    message: `${atHandler.thing} lies within ${AT_HANDLER_M} m of the handler; move one of the two`,
    exit: EXIT.badInput,
    file,
    field: `things[${layout.things.indexOf(atHandler)}]`,
  });
}

function readObject(terminal: Terminal, file: string): object {
  const notGood = (got: string) =>
    new CliFailure({
      code: 'LAYOUT_NOT_GOOD',
      message: `expected one JSON object such as {"handlerAt":{"eastM":0,"northM":0},"things":[]}, got ${got}`,
      exit: EXIT.badInput,
      file,
      field: 'layout',
    });
  let value: unknown;
  try {
    value = JSON.parse(terminal.readFile(file).replace(/^\uFEFF/, ''));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    throw notGood('no JSON');
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) throw notGood('another value');
  return value;
}
