/** The demo dealer's relay, as the built command runs it: mail is written to a folder, and none goes out. */
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { fileURLToPath } from 'node:url';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

const freePort = () => new Promise((resolve, reject) => {
  const server = createServer().once('error', reject).listen(0, '127.0.0.1', () => {
    const { port } = server.address();
    server.close(() => resolve(port));
  });
});

/** The settings of the example, with the demo's catalogue and the one page that may send. */
function settingsFor(origin, folder) {
  const settings = JSON.parse(readFileSync(here('./settings.example.json'), 'utf8'));
  settings.dealers = settings.dealers.map((dealer) => ({ ...dealer, catalogue: here('../catalogue.json'), origins: [origin], page: `${origin}/` }));
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${folder}/settings.json`, JSON.stringify(settings, null, 2));
}

/**
 * @param origin  of the page that may send
 * @returns {Promise<{ address: string, mail: string } | undefined>} where it listens and where mail is written; nothing where it can't be had
 */
export async function runRelay(origin) {
  const data = here('../../.cache/relay');
  settingsFor(origin, data);
  const address = `http://127.0.0.1:${await freePort()}/`;
  const relay = spawn(process.execPath, [here('../../dist/cli/acre-to-axle.js'), 'relay', '--settings', `${data}/settings.json`], {
    env: { ...process.env, ACRE_DATA: data, ACRE_LISTEN: new URL(address).host, ACRE_LOG: 'error' }, stdio: ['ignore', 'ignore', 'pipe'],
  });
  for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, () => relay.once('exit', () => process.exit()) && relay.kill('SIGTERM'));
  let said = '';
  const listens = await new Promise((resolve) => {
    relay.stderr.on('data', (part) => {
      said += part;
      if (said.includes('listens at')) resolve(true);
    });
    relay.once('exit', () => resolve(false));
  });
  if (listens) return { address, mail: `${data}/mail` };
  console.log(`The relay didn't start, so the page offers no mail:\n${said.trim()}`);
  return undefined;
}
