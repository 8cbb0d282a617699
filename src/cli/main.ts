import { createReadStream } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { isMainThread } from 'node:worker_threads';
import { bytesOf } from './bytes-of.ts';
import { colleagues, workAsColleague } from './demand/colleagues.ts';
import { requestsAt } from './demand/requests-at.ts';
import { run } from './run.ts';

/** Put in by the build, from package.json. */
declare const VERSION: string;

/** In a megabyte; Node tells memory in kilobytes. */
const kilobytes = 1024;

const twoDigits = (number: number) => String(number).padStart(2, '0');
const dayOf = (now: Date) => `${now.getFullYear()}-${twoDigits(now.getMonth() + 1)}-${twoDigits(now.getDate())}`;

/** A reader that has seen enough (`| head`) is no fault, and changes nothing about how it ends; a full disk is. */
function onBrokenOutput(error: NodeJS.ErrnoException) {
  if (error.code === 'EPIPE') return;
  process.stderr.write(`acre-to-axle: the output can’t be written (${error.code ?? error.message})\n`);
  process.exit(70);
}
process.stdout.on('error', onBrokenOutput);
// Where even this can't be told, the code it ends with is all there is.
process.stderr.on('error', () => undefined);

const asCommand = () => run({
  argv: process.argv.slice(2),
  version: VERSION,
  readFile: (path) => bytesOf(createReadStream(path)),
  readStdin: () => bytesOf(process.stdin),
  requests: (from, most, progress) => requestsAt(from, fileURLToPath(import.meta.url), most, progress),
  judges: (catalogue) => colleagues(new URL(import.meta.url), catalogue),
  spent: () => ({ seconds: process.uptime(), megabytes: process.resourceUsage().maxRSS / kilobytes }),
  writeFile,
  today: () => dayOf(new Date()),
  out: (line) => process.stdout.write(`${line}\n`),
  err: (line) => process.stderr.write(`${line}\n`),
});

if (isMainThread) process.exitCode = await asCommand();
else workAsColleague();
