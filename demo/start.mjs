/** One command from a fresh clone to the demo dealer's page: installs, builds, serves, prints the address. */
import { install, run } from './setup.mjs';

await install();
run('npm', ['run', '--silent', 'build']);
// What the set-up page hands a dealer: the wizard as one file a language. Their hashes are of no interest here.
run('npm', ['run', '--silent', 'build:package'], { stdio: ['ignore', 'ignore', 'inherit'] });
const { serve } = await import('./serve.mjs');
const { runRelay } = await import('./relay/run.mjs');
/** Known once it runs, which it can only for a page whose address is known. */
const later = {};
const offered = { relay: () => later.address };
const wanted = Number(process.env.PORT ?? 4173);
const { address } = await serve(wanted, offered).catch((trouble) => {
  if (trouble.code !== 'EADDRINUSE') throw trouble;
  console.log(`Port ${wanted} is taken; another is used.`);
  return serve(0, offered);
});
const relay = await runRelay(new URL(address).origin);
later.address = relay?.address;
console.log(`\nThe demo dealer's page is at ${address}\nThe rule book it goes by is at ${address}rulebook.html\nWhat an invented season asked for is at ${address}demand.html${relay ? `\nMail that is asked for is written to ${relay.mail}` : ''}\nA dealer sets up his own at ${address}setup/\nHis counter is at ${address}counter/\nStop it with Ctrl+C.`);
