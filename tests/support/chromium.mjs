/** Finds a Chromium for the tests: on the system, else one out of the package registry. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome', 'microsoft-edge'];
const places = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

function onSystem() {
  const onPath = (process.env.PATH ?? '').split(delimiter).flatMap((folder) => names.map((name) => join(folder, name)));
  return [process.env.CHROMIUM_PATH, process.env.CHROME_PATH, ...onPath, ...places].find((path) => path && existsSync(path));
}

/** Fetched only where the system has none: it is large, and runs on Linux alone. */
const packaged = '@sparticuz/chromium@153.0.0';

async function fromRegistry() {
  const root = fileURLToPath(new URL('../..', import.meta.url));
  // Looked for as a folder: an import that failed once fails again in the same process.
  if (!existsSync(join(root, 'node_modules', '@sparticuz', 'chromium'))) {
    console.log(`No Chromium on this system; fetching ${packaged}.`);
    spawnSync('npm', ['install', '--no-save', '--no-audit', '--no-fund', packaged], { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' });
  }
  return (await import('@sparticuz/chromium')).default;
}

/** Flags that keep a headless Chromium quiet and off the network. */
export const quietFlags = [
  '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
  '--disable-component-update', '--disable-sync', '--disable-dev-shm-usage',
];

/**
 * @returns {Promise<{ executablePath: string, args: string[] }>}
 * @throws where there is none, with what to do about it
 */
export async function findChromium() {
  const executablePath = onSystem();
  if (executablePath) return { executablePath, args: quietFlags };
  try {
    const chromium = await fromRegistry();
    return { executablePath: await chromium.executablePath(), args: [...chromium.args, ...quietFlags] };
  } catch (trouble) {
    throw new Error(
      `No Chromium was found for the tests (${trouble.message}). Install Chromium or Chrome with your system's package manager, or set CHROMIUM_PATH to one.`,
      { cause: trouble },
    );
  }
}
