/** Finds a Chromium for the tests: on the system, else the one that comes with the packages. */
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

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
    const { default: packaged } = await import('@sparticuz/chromium');
    return { executablePath: await packaged.executablePath(), args: [...packaged.args, ...quietFlags] };
  } catch (trouble) {
    throw new Error(
      `No Chromium was found for the tests (${trouble.message}). Install Chromium or Chrome with your system's package manager, or set CHROMIUM_PATH to one.`,
      { cause: trouble },
    );
  }
}
