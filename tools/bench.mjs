import { runAsMain } from './repository.mjs';
import { runScripts } from './run-scripts.mjs';

/** Runs every bench of `bench/`, or those whose names are given. */
await runAsMain(import.meta.url, (names) => runScripts('bench', names, []));
