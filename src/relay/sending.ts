import type { Compose } from './sender/composed.ts';
import { folderTransport } from './sender/folder-transport.ts';
import { senderMetrics } from './sender/sender-metrics.ts';
import { createSender, type Sender } from './sender/sender.ts';
import { smtpTransport } from './sender/smtp/smtp-transport.ts';
import type { SenderNeeds } from './start.ts';

/** What sends, as the settings have it: to a folder until a mail server is named. */
export function sendingBy({ settings, metrics, ...needs }: SenderNeeds, compose: Compose): Sender {
  const { mail } = settings;
  const { hostname } = new URL(needs.address);
  const transport = mail.kind === 'folder' ? folderTransport(mail.folder) : smtpTransport({ ...mail, name: hostname });
  return createSender({ ...needs, settings, compose, transport, rates: { perMinute: settings.mailsPerMinute, perDay: settings.mailsPerDay }, metrics: senderMetrics(metrics.registry) });
}
