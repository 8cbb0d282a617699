/** Runs the file named `code.cjs` beside it from compiled code that was kept, or keeps it: most of a start is compiling, which no kill has to do with. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { Script } from 'node:vm';

const folder = dirname(process.argv[1]!);
const file = join(folder, 'code.cjs');
const kept = join(folder, 'code.cache');
const cachedData = existsSync(kept) ? readFileSync(kept) : undefined;
const script = new Script(`(function (exports, require, module) {${readFileSync(file, 'utf8')}\n})`, { filename: file, cachedData });
if (script.cachedDataRejected) throw new Error(`${kept} isn’t of this Node.`);
const module = { exports: {} };
(script.runInThisContext() as (exports: object, require: NodeJS.Require, module: object) => void)(module.exports, createRequire(file), module);
if (!cachedData) {
  writeFileSync(kept, script.createCachedData());
  process.exit(0);
}
