import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { differencesFromLock, type Bill } from '../bill-of-materials.ts';
import { billFile, hashLines, type HashedFile } from '../build-all.ts';
import { findingsOf, type Released } from '../checks.ts';
import { inProject, packageFile, readText } from '../project.ts';
import { surfaceNow } from '../surface.ts';
import { json, write } from '../write.ts';

/** What was released last; not there before the first release. */
const lastFile = 'src/release/last-release.json';
/** Where the package is put that is to be published. */
const outFolder = '.cache/release';

const ran = (command: string, args: readonly string[]) =>
  spawnSync(command, args, { cwd: inProject('.'), encoding: 'utf8', maxBuffer: 2 ** 26, shell: process.platform === 'win32' });

/** A release is of what is committed, so that anybody can build the same. */
function treeLeft(): string[] {
  const { status, stdout } = ran('git', ['status', '--porcelain']);
  if (status !== 0) return ['git: this is no checkout; release from one'];
  return stdout.trim() === '' ? [] : ['git: there are changes that aren\'t committed'];
}

interface Packed {
  filename: string;
  integrity: string;
  size: number;
  files: readonly { path: string }[];
}

/** Builds all and packs it; npm does so by the script `prepack`. */
function pack(): Packed {
  mkdirSync(inProject(outFolder), { recursive: true });
  const { status, stdout, stderr } = ran('npm', ['pack', '--json', '--pack-destination', outFolder]);
  if (status !== 0) throw new Error(`npm pack ended with ${status}:\n${stdout}${stderr}`);
  // What the builds print comes first.
  const [packed] = JSON.parse(stdout.slice(stdout.search(/^\[$/m))) as [Packed];
  return packed;
}

function builtFaults(packed: Packed): string[] {
  const bill = JSON.parse(readText(`dist/${billFile}`)) as Bill;
  const carried = new Set(packed.files.map(({ path }) => path));
  return [
    ...differencesFromLock(bill, readText('package-lock.json')),
    ...[`dist/${billFile}`, 'dist/custom-elements.json', 'dist/package/embed/main.js', 'dist/widget/acre-to-axle.js', 'dist/cli/acre-to-axle.js']
      .filter((path) => !carried.has(path)).map((path) => `the package lacks ${path}`),
  ];
}

const under = (heading: string, lines: readonly string[]) => (lines.length === 0 ? [] : ['', heading, ...lines.map((line) => `  ${line}`)]);

const nextSteps = (version: string, filename: string) => [
  `1. git add ${lastFile} && git commit -m "${version}" && git tag v${version} && git push --follow-tags`,
  `2. npm publish ${join(outFolder, filename)} --provenance, from a machine that others can check, with a second factor`,
  `3. put dist/embed/${version} on the host of the scripts, beside the versions that are there; none of those is changed`,
  `4. attach dist/${billFile} and dist/embed/${version}/integrity.json to the release, and paste the section of CHANGELOG.md`,
];

/**
 * Builds, checks, writes the bill of materials and prints the hashes. With `--dry-run` nothing else; without it what is
 * released is noted down for the next time, and the steps that are a person's are printed. It publishes nothing.
 *
 * @returns 0 where the release may go on, 1 where something forbids it, 2 where the command was wrong
 */
export function run(options: readonly string[]): number {
  const wrong = options.filter((option) => option !== '--dry-run');
  if (wrong.length > 0) {
    console.error(`There is no option ${wrong.join(', ')}. There is: --dry-run.`);
    return 2;
  }
  const tried = options.includes('--dry-run');
  const { version } = packageFile();
  const surface = surfaceNow();
  const last = existsSync(inProject(lastFile)) ? (JSON.parse(readText(lastFile)) as Released) : undefined;
  const { faults, left, changes } = findingsOf({ version, surface, changelog: readText('CHANGELOG.md'), last });
  const packed = pack();
  const all = [...faults, ...builtFaults(packed)];
  const open = [...treeLeft(), ...left];
  const { files } = JSON.parse(readText(`dist/embed/${version}/integrity.json`)) as { files: HashedFile[] };
  const told = [
    `acre-to-axle ${version}, ${last ? `after ${last.version}` : 'the first release'}: ${Object.keys(surface).length} public entries, ${changes.length} of them changed`,
    ...under('Changed since:', changes.map(({ entry, before, now, step }) => `${step}: ${entry}${before === undefined ? ' is new' : now === undefined ? ' is gone' : ` was ${before}, is ${now}`}`)),
    ...under('Files by their hashes:', [...hashLines(files), `${packed.filename} ${packed.size} bytes, ${packed.files.length} files  ${packed.integrity}`]),
    '', `Bill of materials, held against the lock file: dist/${billFile}`,
    ...under('Forbids the release:', all),
    ...under('Still to be done:', open),
  ];
  told.forEach((line) => console.log(line));
  if (all.length > 0 || (!tried && open.length > 0)) return 1;
  if (tried) {
    console.log('\nTried: nothing was noted down and nothing published.');
    return 0;
  }
  write(inProject(lastFile), json({ version, surface } satisfies Released));
  under('Next:', nextSteps(version, packed.filename)).forEach((line) => console.log(line));
  return 0;
}
