import { Command, CommanderError } from 'commander';
import { CliFailure, EXIT, type FailureParts, failureDocument, failureLine } from './cli-failure.ts';
import { addChance } from './commands/chance.ts';
import { addCheck } from './commands/check.ts';
import type { Exit } from './commands/command.ts';
import { addDemo } from './commands/demo.ts';
import { addForecast } from './commands/forecast.ts';
import { addLayout } from './commands/layout.ts';
import { addListen } from './commands/listen.ts';
import { addNext } from './commands/next.ts';
import { addPatterns } from './commands/patterns.ts';
import { addPlan } from './commands/plan.ts';
import { addReplay } from './commands/replay.ts';
import { addStanding } from './commands/standing.ts';
import { addWeather } from './commands/weather.ts';
import { addWhistle } from './commands/whistle.ts';
import { addWhy } from './commands/why.ts';
import type { Terminal } from './terminal.ts';

const HELP_CODES: ReadonlySet<string> = new Set([
  'commander.helpDisplayed',
  'commander.help',
  'commander.version',
]);

/** The command line as a function: arguments in, exit status out; everything else goes through the terminal. */
export async function runProgram(args: readonly string[], terminal: Terminal): Promise<Exit> {
  let exit: Exit = EXIT.done;
  const program = new Command('sedgeline')
    .description('reps, chances and the next ask for working retrievers')
    .exitOverride()
    .configureOutput({
      writeOut: (text) => terminal.out(text),
      writeErr: () => undefined,
      outputError: () => undefined,
    });
  for (const add of [
    addCheck,
    addStanding,
    addChance,
    addReplay,
    addWhy,
    addPatterns,
    addForecast,
    addNext,
    addPlan,
    addLayout,
    addWhistle,
    addWeather,
    addListen,
    addDemo,
  ]) {
    add(program, terminal, (status) => {
      exit = status;
    });
  }
  for (const command of program.commands) {
    command.exitOverride().copyInheritedSettings(program);
  }
  try {
    if (args.length === 0) {
      throw usage(`expected a command: ${program.commands.map((command) => command.name()).join(', ')}`);
    }
    await program.parseAsync([...args], { from: 'user' });
    return exit;
  } catch (error) {
    if (error instanceof CommanderError && HELP_CODES.has(error.code) && error.exitCode === 0)
      return EXIT.done;
    return fail(terminal, args.includes('--json'), partsOf(error));
  }
}

function usage(message: string): CliFailure {
  return new CliFailure({ code: 'USAGE', message: `${message}; see sedgeline --help`, exit: EXIT.usage });
}

function partsOf(error: unknown): FailureParts {
  if (error instanceof CliFailure) return error.parts;
  if (error instanceof CommanderError) {
    return usage(error.message.replace(/^error: /, '').replace(/\.$/, '')).parts;
  }
  throw error;
}

function fail(terminal: Terminal, isJson: boolean, parts: FailureParts): Exit {
  if (isJson) terminal.out(`${JSON.stringify(failureDocument(parts))}\n`);
  terminal.err(`${failureLine(parts)}\n`);
  return parts.exit;
}
