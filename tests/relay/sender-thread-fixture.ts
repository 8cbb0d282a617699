/** A thread that goes wrong as the address it is given says. */
import { makeMails } from '../../src/relay/sender/mail-threads.ts';

makeMails(({ document, role }, address) => {
  const what = document.address.split('@')[0];
  if (what === 'throws') throw new Error('can’t');
  if (what === 'ends') process.exit(3);
  if (what === 'hangs') for (;;);
  if (what === 'eats') for (const all: unknown[] = []; ;) all.push(Array.from({ length: 100_000 }, () => ({ all })));
  return { fromName: role, subject: address, text: what! };
});
