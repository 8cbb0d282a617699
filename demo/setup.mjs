/** What both commands of the README need first: the right Node, and the packages of the lock file. */
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Runs a command in the project's folder, its output shown; ends the process where it fails. */
export function run(command, args, options = {}) {
  const { status, error } = spawnSync(command, args, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32', ...options });
  if (error) console.error(`Couldn't run ${command}: ${error.message}`);
  if (error || status !== 0) process.exit(status ?? 1);
}

/** Installs the packages of the lock file unless they are there already. */
export async function install() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    console.error(`This needs Node 20.19 or newer; here is ${process.versions.node}.`);
    process.exit(1);
  }
  const installed = new URL('../node_modules/.package-lock.json', import.meta.url);
  const locked = new URL('../package-lock.json', import.meta.url);
  if (existsSync(installed) && statSync(installed).mtimeMs >= statSync(locked).mtimeMs) return;
  console.log('Installing packages…');
  run('npm', ['ci', '--no-audit', '--no-fund']);
}
