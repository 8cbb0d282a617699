/** Runs one of this room's commands: `node src/release/run.mjs build|document|release [options]`. The rest is TypeScript. */
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

// Libraries are built as they are for visitors, whatever the shell is set to.
process.env.NODE_ENV = 'production';
const [command = '', ...options] = process.argv.slice(2);
const commands = ['build', 'document', 'release'];
if (!commands.includes(command)) {
  console.error(`There is no command ${command || 'without a name'}. There is: ${commands.join(', ')}.`);
  process.exit(2);
}
const { module } = await runnerImport(fileURLToPath(new URL(`commands/${command}.ts`, import.meta.url)), { configFile: false, logLevel: 'warn' });
process.exitCode = await module.run(options);
