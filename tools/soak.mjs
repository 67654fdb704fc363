import { runAsMain } from './repository.mjs';
import { runScripts } from './run-scripts.mjs';

/** Runs the long form of every study of `studies/`, or of those whose names are given. */
await runAsMain(import.meta.url, (names) => runScripts('studies', names, ['--long']));
