/**
 * Mutates one room after the other, in a copy under `.cache`, and lists what no test notices:
 * `npm run mutation`, or `npm run mutation -- needs` for one room.
 */
import { fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { prepare } from './prepare.mjs';
import { asked, rooms } from './rooms.mjs';

const workers = 2;
/** Modules loaded for a mutant stay in memory, so a worker is replaced after so many. */
const mutantsOfWorker = 120;
const longest = 60_000;
const percent = (part, whole) => `${((100 * part) / whole).toFixed(1)} %`;

/** Runs one worker until it has had enough or the queue is empty; what ends it badly is `ended`. */
function work(bundles, queue, outcomes) {
  return new Promise((done) => {
    const worker = fork(fileURLToPath(new URL('worker.mjs', import.meta.url)), [bundles]);
    let current, timer, count = 0;
    worker.on('message', ({ id, failure }) => {
      clearTimeout(timer);
      if (id !== undefined) outcomes.set(id, failure);
      current = count < mutantsOfWorker ? queue.shift() : undefined;
      count += 1;
      if (current === undefined) return worker.kill();
      timer = setTimeout(() => worker.kill('SIGKILL'), longest);
      return worker.send(current);
    });
    worker.on('exit', () => {
      clearTimeout(timer);
      if (current !== undefined) outcomes.set(current, 'ended');
      done();
    });
  });
}

async function outcomesOf(bundles, ids) {
  const queue = [...ids], outcomes = new Map();
  await Promise.all(Array.from({ length: Math.min(workers, ids.length) }, async () => {
    while (queue.length > 0) await work(bundles, queue, outcomes);
  }));
  return outcomes;
}

async function mutate(room) {
  const started = Date.now();
  const { bundles, mutants } = await prepare(room);
  const unmutated = (await outcomesOf(bundles, ['none'])).get('none');
  if (unmutated !== undefined) throw new Error(`The tests of ${room} fail without any mutant: ${unmutated}`);
  const outcomes = await outcomesOf(bundles, mutants.map(({ id }) => id));
  const survived = mutants.filter(({ id }) => outcomes.get(id) === undefined);
  for (const { file, line, mutator, original, replacement } of survived) {
    console.log(`${room}/${file}:${line} ${mutator}: ${original.slice(0, 90)} → ${replacement.slice(0, 90)}`);
  }
  for (const file of new Set(mutants.map((mutant) => mutant.file))) {
    const [all, left] = [mutants, survived].map((some) => some.filter((mutant) => mutant.file === file).length);
    console.log(`${`${room}/${file}`.padEnd(44)} ${String(all - left).padStart(4)} noticed ${String(left).padStart(4)} not`);
  }
  const noticed = mutants.length - survived.length, ended = [...outcomes.values()].filter((failure) => failure === 'ended').length;
  console.log(`${room}: ${noticed} of ${mutants.length} noticed (${percent(noticed, mutants.length)}), ${ended} of them by no end; ${Math.round((Date.now() - started) / 1000)} s\n`);
  return noticed >= asked * mutants.length;
}

const wanted = process.argv.slice(2);
const unknown = wanted.filter((room) => !Object.hasOwn(rooms, room));
if (unknown.length > 0) throw new Error(`No room to mutate: ${unknown.join(', ')}. There are ${Object.keys(rooms).join(', ')}.`);
let enough = true;
for (const room of wanted.length > 0 ? wanted : Object.keys(rooms)) enough = (await mutate(room)) && enough;
if (!enough) console.error(`Fewer than ${percent(asked, 1)} of a room's mutants are noticed.`);
process.exit(enough ? 0 : 1);
