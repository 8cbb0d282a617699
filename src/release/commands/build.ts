import { buildAll, hashLines } from '../build-all.ts';
import { inProject } from '../project.ts';

/** Builds what a release publishes, and prints the hashes of the single files. */
export async function run(): Promise<number> {
  for (const line of hashLines(await buildAll(inProject('dist')))) console.log(line);
  return 0;
}
