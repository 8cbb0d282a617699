import { spawnSync } from 'node:child_process';
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inProject, packageFile } from './project.ts';

/**
 * Writes the modules of the npm package with their types: one file a file of ours, nothing pressed, packages left to
 * be installed. The compiler alone makes them, so that whoever bundles gets what was written.
 *
 * @throws where the compiler has an objection, with its words
 */
export function writePackageModules(folder: string): void {
  rmSync(folder, { recursive: true, force: true });
  const { status, stdout, stderr } = spawnSync(
    process.execPath, [inProject('node_modules/typescript/bin/tsc'), '--project', inProject('src/embed/tsconfig.json'), '--outDir', folder], { encoding: 'utf8' },
  );
  if (status !== 0) throw new Error(`The modules of the package can't be made:\n${stdout}${stderr}`);
  // The one thing that is known only when it is built.
  writeFileSync(join(folder, 'widget/version.js'), `export const version = ${JSON.stringify(packageFile().version)};\n`);
}
