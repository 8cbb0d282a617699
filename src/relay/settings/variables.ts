import { isIP } from 'node:net';
import { isAddress } from '../../documents/mail-address.ts';
import * as z from '../../zod.ts';

/** One setting of the environment: its schema, what stands for it unsaid, and what it is, in words. */
interface Variable<T extends z.ZodMiniType = z.ZodMiniType> {
  schema: T;
  /** Unsaid; undefined where it then isn't there. */
  preset: string | undefined;
  /** What it has to be, with an example. */
  expected: string;
  /** What it does, for the administrator's page. */
  does: string;
  /** Never shown. */
  secret?: true;
}

const variable = <T extends z.ZodMiniType>(given: Variable<T>) => given;
const text = (most: number) => z.string().check(z.minLength(1), z.maxLength(most));
const whole = (least: number, most: number) => z.pipe(z.string().check(z.regex(/^\d{1,9}$/)), z.pipe(z.transform(Number), z.int().check(z.minimum(least), z.maximum(most))));

export interface Place {
  host: string;
  port: number;
}
const mostPort = 65_535;
const place = z.pipe(
  z.string().check(z.regex(/^(?:[\w.-]+|\[[0-9a-fA-F:.]+\]):\d{1,5}$/), z.refine((written) => Number(written.slice(written.lastIndexOf(':') + 1)) <= mostPort)),
  z.transform((written: string): Place => ({ host: written.slice(0, written.lastIndexOf(':')).replace(/^\[|\]$/g, ''), port: Number(written.slice(written.lastIndexOf(':') + 1)) })),
);

const parsed = (written: string) => (URL.canParse(written) ? new URL(written) : undefined);
const isLocal = (host: string) => ['localhost', '127.0.0.1', '[::1]'].includes(host);
const isPublic = (written: string) => {
  const address = parsed(written);
  return address !== undefined && (address.protocol === 'https:' || (address.protocol === 'http:' && isLocal(address.hostname)))
    && `${address.username}${address.password}${address.search}${address.hash}` === '';
};
const isSubmission = (written: string) => {
  const address = parsed(written);
  return address !== undefined && ['smtp:', 'smtps:'].includes(address.protocol) && address.hostname !== '' && `${address.username}${address.password}${address.search}${address.hash}` === '' && ['', '/'].includes(address.pathname);
};
const isDatabase = (written: string) => {
  const address = parsed(written);
  return address !== undefined && ['postgres:', 'postgresql:'].includes(address.protocol) && address.hostname !== '' && address.pathname.length > 1;
};
const isNetwork = (written: string) => {
  const [address = '', bits, more] = written.split('/');
  const family = isIP(address);
  return family !== 0 && more === undefined && (bits === undefined || (/^\d{1,3}$/.test(bits) && Number(bits) <= (family === 4 ? 32 : 128)));
};
const networks = z.pipe(z.transform((written: string) => written.split(',').map((each) => each.trim()).filter((each) => each !== '')), z.array(z.string().check(z.refine(isNetwork))).check(z.maxLength(100)));

/** Every setting of a relay that isn't a dealer's. */
export const variables = {
  ACRE_DATA: variable({ schema: text(1_000), preset: './acre-relay', expected: 'a folder', does: 'Where requests (but see ACRE_DATABASE), secrets and, until a mail server is named, mail are kept. Made where it isn’t there; on a disk of this machine, never on a network’s.' }),
  ACRE_DATABASE: variable({ schema: text(2_000).check(z.refine(isDatabase)), preset: undefined, expected: 'the address of a PostgreSQL database, such as postgres://relay@db.example/relay?sslmode=verify-full', does: 'Where requests are kept instead of in a file of the data folder, so that several relays share them. Without a password in it `PGPASSFILE` is used. Never shown.', secret: true }),
  ACRE_KEYS: variable({ schema: text(1_000), preset: undefined, expected: 'a file', does: 'Where the relay’s secrets lie; `keys.json` in the data folder if not said. With ACRE_DATABASE all relays have the same, and what runs in a container can have it handed in.' }),
  ACRE_SETTINGS: variable({ schema: text(1_000), preset: undefined, expected: 'a file of JSON, or a folder of such files', does: 'Who the dealers are; `settings.json` in the data folder if not said. The option --settings goes before it.' }),
  ACRE_LISTEN: variable({ schema: place, preset: '127.0.0.1:8420', expected: 'a name or number and a port, such as 127.0.0.1:8420', does: 'Where the relay listens, behind a server that speaks TLS.' }),
  ACRE_ADDRESS: variable({ schema: text(300).check(z.refine(isPublic)), preset: undefined, expected: 'the public address, such as https://mail.dealer.example/', does: 'What links in mails begin with. Needed where a mail server is named; the place it listens at if not said.' }),
  ACRE_PROXIES: variable({ schema: networks, preset: '', expected: 'addresses or networks with commas between them, such as 127.0.0.1,10.0.0.0/8', does: 'Whose X-Forwarded-For is believed: the servers in front of the relay, and no others.' }),
  ACRE_SMTP: variable({ schema: text(300).check(z.refine(isSubmission)), preset: undefined, expected: 'a mail server such as smtp://mail.example:587 or smtps://mail.example:465, without name and password', does: 'The server that takes mail from us. Without it every mail is written to the folder `mail` in the data folder, and none goes out.' }),
  ACRE_SMTP_USER: variable({ schema: text(300), preset: undefined, expected: 'a name', does: 'The name to log in with at the mail server.' }),
  ACRE_SMTP_PASSWORD_FILE: variable({ schema: text(1_000), preset: undefined, expected: 'a file', does: 'A file that holds the password and nothing else, as systemd and containers hand in secrets.' }),
  ACRE_SMTP_PASSWORD: variable({ schema: text(1_000), preset: undefined, expected: 'a password', does: 'The password itself, where it can’t be a file.', secret: true }),
  ACRE_SENDER: variable({ schema: text(254).check(z.refine(isAddress)), preset: 'shortlist@relay.invalid', expected: 'a mail address of your own domain, such as shortlist@mail.dealer.example', does: 'What every mail is from. Needed where a mail server is named; SPF, DKIM and DMARC have to be set for its domain.' }),
  ACRE_BOUNCES: variable({ schema: text(200).check(z.regex(/^(?:[A-Za-z0-9](?:[A-Za-z0-9-]*[A-Za-z0-9])?\.)+[A-Za-z]{2,}$/)), preset: undefined, expected: 'a domain such as bounce.dealer.example', does: 'Where mail that can’t be delivered comes back to; the sender’s own domain if not said.' }),
  ACRE_MAILS_PER_DAY: variable({ schema: whole(1, 10_000_000), preset: '1000', expected: 'a whole number from 1', does: 'What your mail server takes in a day; four fifths of it are used.' }),
  ACRE_MAILS_PER_MINUTE: variable({ schema: whole(1, 1_000_000), preset: '60', expected: 'a whole number from 1', does: 'What your mail server takes in a minute; no more go out.' }),
  ACRE_QUEUE_MOST: variable({ schema: whole(1, 10_000_000), preset: '50000', expected: 'a whole number from 1', does: 'With so many mails waiting nothing more is taken until there are fewer.' }),
  ACRE_FREE_LEAST: variable({ schema: whole(1, 1_000_000), preset: '64', expected: 'megabytes, a whole number from 1', does: 'With less room on the disk nothing more is taken.' }),
  ACRE_OLDEST_PAGE: variable({ schema: z.string().check(z.regex(/^\d{1,5}(?:\.\d{1,5}){2}$/)), preset: '0.1.0', expected: 'a version of three numbers, such as 0.2.0', does: 'The oldest version of the counter’s page that may still send. An older one keeps all it takes in, sealed, looks for a newer one on the dealer’s site, and changes to it between two customers.' }),
  ACRE_METRICS: variable({ schema: place, preset: undefined, expected: 'a name or number and a port, such as 127.0.0.1:9420', does: 'Where /metrics can be read, apart from the public port; nowhere if not said.' }),
  ACRE_PAGES: variable({ schema: text(1_000), preset: undefined, expected: 'a folder', does: 'A folder of built pages to serve as well, such as a dealer’s page with the wizard.' }),
  ACRE_LOG: variable({ schema: z.enum(['error', 'warn', 'info', 'debug', 'silent']), preset: 'info', expected: 'error, warn, info, debug or silent', does: 'How much is logged. No personal data at any of them.' }),
} as const;

export type VariableName = keyof typeof variables;
export type Variables = { [Name in VariableName]: z.infer<(typeof variables)[Name]['schema']> | undefined };
