import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { snippet } from '../embed/snippet.ts';
import { billOfMaterials } from './bill-of-materials.ts';
import { writePackageModules } from './package-modules.ts';
import { packageFile, readText } from './project.ts';
import { publicManifest } from './public-manifest.ts';
import { integrityOf, singleFiles } from './single-files.ts';
import { json, write } from './write.ts';

/** The bill of materials, in `dist`; its ending is the one CycloneDX asks for. */
export const billFile = 'acre-to-axle.cdx.json';

/** What is told of a file that a page names by its hash. */
export interface HashedFile {
  file: string;
  integrity: string;
  bytes: number;
  /** As most servers send it. */
  brotliBytes: number;
}

const told = ([file, text]: readonly [string, string]): HashedFile =>
  ({ file, integrity: integrityOf(text), bytes: Buffer.byteLength(text), brotliBytes: brotliCompressSync(text).length });

/** What to paste for a file; where it lies only the dealer knows. */
const snippetFor = ({ file, integrity }: HashedFile, version: string) => snippet({
  script: `https://www.example.com/acre-to-axle/${version}/${file}`, integrity,
  attributes: { catalogue: '/catalogue.json' },
  fallback: [{ text: '+1 555 0100', href: 'tel:+15550100' }],
});

/**
 * Builds all that is published but the widget of several files and the command line, which have builds of their own:
 * the modules of the package, the wizard as one file a language, the manifest of the element, the bill of materials.
 *
 * @param dist  folder to write to
 * @returns the single files with their hashes
 */
export async function buildAll(dist: string): Promise<readonly HashedFile[]> {
  const { version } = packageFile();
  writePackageModules(join(dist, 'package'));
  const files = await singleFiles();
  const hashed = [...files].map(told);
  const folder = join(dist, 'embed', version);
  rmSync(folder, { recursive: true, force: true });
  for (const [file, text] of files) write(join(folder, file), text);
  for (const each of hashed.filter(({ file }) => !file.includes('.words.'))) {
    write(join(folder, each.file.replace(/^acre-to-axle\.(\w+)\.js$/, 'snippet.$1.html')), snippetFor(each, version));
  }
  write(join(folder, 'integrity.json'), json({ version, files: hashed }));
  write(join(dist, 'custom-elements.json'), json(publicManifest()));
  write(join(dist, billFile), json(billOfMaterials(packageFile(), readText('package-lock.json'))));
  return hashed;
}

/** The hashes as lines to read. */
export const hashLines = (files: readonly HashedFile[]) =>
  files.map(({ file, integrity, bytes, brotliBytes }) => `${file.padEnd(26)} ${String(bytes).padStart(7)} bytes, ${String(brotliBytes).padStart(6)} pressed  ${integrity}`);
