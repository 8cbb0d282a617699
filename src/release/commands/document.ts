import { writeFileSync } from 'node:fs';
import { apiTables, withTables } from '../api-tables.ts';
import { publicManifest } from '../public-manifest.ts';
import { inProject, readText } from '../project.ts';

/** Writes the tables of the public surface into the README. */
export function run(): number {
  writeFileSync(inProject('README.md'), withTables(readText('README.md'), apiTables(publicManifest())));
  return 0;
}
