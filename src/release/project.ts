import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Path of a file or folder of the project. */
export const inProject = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

export const readText = (path: string) => readFileSync(inProject(path), 'utf8');

/** What of `package.json` is built and released by. */
export interface PackageFile {
  name: string;
  version: string;
  description: string;
  license: string;
  dependencies: Readonly<Record<string, string>>;
}

export const packageFile = () => JSON.parse(readText('package.json')) as PackageFile;
