import { runServer } from './run-server.ts';

process.exitCode = await runServer(process.argv.slice(2), process);
