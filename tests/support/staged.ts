import { cpSync, mkdtempSync, realpathSync, rmSync, symlinkSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from './sources.ts';

/** Runs a command, with what it printed; one that fails is thrown with it. */
export function ran(command: string, args: readonly string[], cwd: string, env: NodeJS.ProcessEnv = {}): string {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd, encoding: 'utf8', maxBuffer: 2 ** 26, env: { ...process.env, ...env }, shell: process.platform === 'win32' });
  if (status !== 0) throw new Error(`${command} ${args.join(' ')} ended with ${status}:\n${stdout}${stderr}`);
  return stdout;
}

/** A folder of its own that is taken away again. */
export function ownFolder(name: string) {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), name)));
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

/** What a build reads and a package carries, copied elsewhere: what is built there has nothing of this folder in it. */
export function staged(folder: string, from: string = root): string {
  const project = join(folder, 'project');
  for (const each of ['src', 'demo/schema', 'package.json', 'package-lock.json', 'tsconfig.json', 'README.md', 'CHANGELOG.md', 'LICENSE']) {
    cpSync(join(from, each), join(project, each), { recursive: true });
  }
  symlinkSync(join(root, 'node_modules'), join(project, 'node_modules'), 'junction');
  return project;
}
