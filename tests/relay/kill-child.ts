/** A relay as it is, in a process of its own, to be killed: its server, its store and its sender; only the mails are plain. */
import { appendFileSync } from 'node:fs';
import { join } from 'node:path';
import { clock } from '../../src/relay/clock.ts';
import { logTo } from '../../src/relay/log.ts';
import { senderMetrics } from '../../src/relay/sender/sender-metrics.ts';
import { createSender, type Sender } from '../../src/relay/sender/sender.ts';
import { smtpTransport } from '../../src/relay/sender/smtp/smtp-transport.ts';
import { dealerOf } from '../../src/relay/settings/dealer.ts';
import type { Settings } from '../../src/relay/settings/read-settings.ts';
import { startRelay } from '../../src/relay/start.ts';
import type { Store } from '../../src/relay/store/store.ts';
import type { ChildOrders } from './kill-run.ts';

const { folder, smtpPort, device, dealer, origin, redrive, database, waits } = JSON.parse(process.argv[2]!) as ChildOrders;
const many = 100_000;
const settings: Settings = {
  data: folder, database, listen: { host: '127.0.0.1', port: 0 }, address: 'https://relay.example/', proxies: [], mail: { kind: 'folder', folder }, sender: 'shortlist@relay.example', bounces: 'bounce.relay.example',
  mailsPerDay: 10_000_000, mailsPerMinute: 1_000_000, queueMost: 10_000_000, freeLeast: 0, oldestPage: '0.1.0', metrics: undefined, pages: undefined, log: 'warn',
  dealers: new Map([[dealer, dealerOf({
    id: dealer, catalogue: join(folder, 'catalogue.json'), origins: [origin], mail: 'yard@dealer.example', senderName: 'Demo Lot', postalAddress: '41 Quarry Lane, Sallow County',
    limits: { perHour: many, perDay: many, devicePerHour: many }, devices: [{ id: 'counter', hash: device }],
  })]]),
};

const often = 100;
let again: NodeJS.Timeout | undefined;
async function sendAgain(store: Store, sender: Sender): Promise<void> {
  if (await store.sendAgain('all', clock.now()) > 0) sender.wake();
}

async function run(): Promise<void> {
  const log = logTo('warn', { write: (line: string) => appendFileSync(join(folder, 'log'), line) });
  const relay = await startRelay(settings, log, (needs) => {
    const sender = createSender({
      ...needs, metrics: senderMetrics(needs.metrics.registry), transport: smtpTransport({ host: '127.0.0.1', port: smtpPort, tls: false, plain: true }),
      compose: async ({ document }) => ({ fromName: 'Demo Lot', subject: 'Your shortlist', text: `For ${document.answers.tasks?.length ?? 0} tasks.\n` }),
    });
    return {
      ...sender,
      async stop(deadline) {
        clearInterval(again);
        await sender.stop(deadline);
      },
      async start() {
        await sender.start();
        // What three kills in a row had set aside goes on as an administrator would have it.
        if (redrive) again = setInterval(() => void sendAgain(needs.store, sender), often);
      },
    };
  });
  process.on('SIGTERM', () => void relay.stop());
  process.send!({ port: relay.port, at: Date.now() });
  process.exitCode = await relay.ended ? 0 : 1;
  process.disconnect();
}

// Loaded already, it touches nothing of the store before the one ahead of it is dead.
if (waits) {
  process.once('message', () => void run());
  process.send?.('loaded');
} else void run();
