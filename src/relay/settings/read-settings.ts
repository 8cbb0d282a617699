import { readdir, readFile, stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { nearest } from '../../documents/nearest.ts';
import { placeOf, shown } from '../../documents/fault.ts';
import { readDocument } from '../../documents/read.ts';
import * as z from '../../zod.ts';
import { dealerOf, settingsDocument, type Dealer, type DealerDocument } from './dealer.ts';
import { variables, type Place, type VariableName, type Variables } from './variables.ts';

/** How mail leaves: into a folder, for trying out, or to a server. */
export type MailRoute =
  | { kind: 'folder'; folder: string }
  | { kind: 'smtp'; host: string; port: number; /** TLS from the first byte; else STARTTLS, and nothing without it. */ tls: boolean; user?: string; password?: string };

export interface Settings {
  data: string;
  /** Address of a PostgreSQL database, with its password; undefined for a file in the data folder. */
  database?: string | undefined;
  /** The file of secrets, where it isn't the one in the data folder. */
  keys?: string | undefined;
  listen: Place;
  /** Ends with a slash; undefined where links are to begin with the place it listens at. */
  address: string | undefined;
  proxies: readonly string[];
  mail: MailRoute;
  sender: string;
  bounces: string;
  mailsPerDay: number;
  mailsPerMinute: number;
  queueMost: number;
  /** Bytes. */
  freeLeast: number;
  /** The oldest version of the counter’s page that may still send, as `1.2.3`. */
  oldestPage: string;
  metrics: Place | undefined;
  pages: string | undefined;
  log: 'error' | 'warn' | 'info' | 'debug' | 'silent';
  dealers: ReadonlyMap<string, Dealer>;
}

/** What is wrong with the settings: all of it, each with what to do. Holds no secret. */
export class SettingsFault extends Error {
  readonly lines: readonly string[];
  constructor(lines: readonly string[]) {
    super(lines.join('\n'));
    this.lines = lines;
  }
}

/** Domain of the sender: the right-hand side of Message-IDs. */
export const domainOf = ({ sender }: Pick<Settings, 'sender'>) => sender.slice(sender.indexOf('@') + 1);

const names = Object.keys(variables) as VariableName[];

function readVariables(env: Readonly<Record<string, string | undefined>>, faults: string[]): Variables {
  for (const name of Object.keys(env).filter((each) => each.startsWith('ACRE_') && !names.includes(each as VariableName))) {
    const near = nearest(name, names);
    faults.push(`${name}: no setting of this relay${near ? ` (nearest: ${near})` : ''}; take it out of the environment`);
  }
  return Object.fromEntries(names.map((name) => {
    const { schema, preset, expected, ...rest } = variables[name];
    const written = env[name] === '' ? preset : env[name] ?? preset;
    if (written === undefined) return [name, undefined];
    const read = z.safeParse(schema as z.ZodMiniType, written);
    if (!read.success) faults.push(`${name}: read ${'secret' in rest ? '(not shown)' : shown(written)}, expected ${expected}`);
    return [name, read.success ? read.data : undefined];
  })) as Variables;
}

const codeOf = (error: unknown) => String((error as { code?: unknown }).code ?? 'no reason given');

async function filesOf(path: string): Promise<string[]> {
  if (!(await stat(path)).isDirectory()) return [path];
  const inside = await readdir(path);
  return inside.filter((name) => name.endsWith('.json')).sort().map((name) => join(path, name));
}

async function dealersIn(file: string, faults: string[]): Promise<DealerDocument[]> {
  let document: unknown;
  try {
    document = JSON.parse(await readFile(file, 'utf8'));
  } catch (error) {
    faults.push(`${file}: the settings can’t be read (${error instanceof SyntaxError ? 'no JSON' : codeOf(error)})`);
    return [];
  }
  const reading = readDocument(settingsDocument, document);
  for (const { place, read, expected, nearest: near } of [...reading.faults, ...reading.unknownKeys]) {
    faults.push(`${file}: ${place || 'the whole'}: read ${read}, expected ${expected}${near ? ` (nearest: ${near})` : ''}`);
  }
  return (reading.value?.dealers ?? []).map((each) => ({ ...each, catalogue: each.catalogue.startsWith('https:') ? each.catalogue : resolve(dirname(file), each.catalogue) }));
}

async function readDealers(path: string, faults: string[]): Promise<Map<string, Dealer>> {
  const dealers = new Map<string, Dealer>();
  const files = await filesOf(path).catch((error: unknown) => {
    faults.push(`${path}: the dealers’ settings aren’t there (${codeOf(error)}); name the file with --settings or ACRE_SETTINGS. demo/relay/settings.example.json shows one`);
    return [];
  });
  for (const file of files) {
    for (const [index, document] of (await dealersIn(file, faults)).entries()) {
      if (dealers.has(document.id)) faults.push(`${file}: ${placeOf(['dealers', index, 'id'])}: read ${shown(document.id)}, expected an id no other dealer has`);
      dealers.set(document.id, dealerOf(document));
    }
  }
  if (files.length === 0 && faults.length === 0) faults.push(`${path}: no file that ends with .json is in this folder`);
  return dealers;
}

async function passwordOf({ ACRE_SMTP_PASSWORD: password, ACRE_SMTP_PASSWORD_FILE: file }: Variables, faults: string[]) {
  if (password !== undefined && file !== undefined) faults.push('ACRE_SMTP_PASSWORD: stands beside ACRE_SMTP_PASSWORD_FILE; keep one of them, better the file');
  if (file === undefined) return password;
  try {
    return (await readFile(file, 'utf8')).replace(/\r?\n$/, '');
  } catch (error) {
    faults.push(`ACRE_SMTP_PASSWORD_FILE: ${file} can’t be read (${codeOf(error)})`);
    return undefined;
  }
}

const ports = { 'smtp:': 587, 'smtps:': 465 } as const;

async function mailOf(given: Variables, env: Readonly<Record<string, string | undefined>>, data: string, faults: string[]): Promise<MailRoute> {
  const password = await passwordOf(given, faults);
  const { ACRE_SMTP: server, ACRE_SMTP_USER: user } = given;
  if ((user === undefined) !== (password === undefined)) faults.push('ACRE_SMTP_USER: name and password go together; set both, or neither where the server asks for none');
  if (server === undefined) {
    if (user !== undefined && !env.ACRE_SMTP) faults.push('ACRE_SMTP: not set, but ACRE_SMTP_USER is; name the server, such as smtp://mail.example:587');
    return { kind: 'folder', folder: join(data, 'mail') };
  }
  for (const name of ['ACRE_ADDRESS', 'ACRE_SENDER'] as const) {
    if (!env[name]) faults.push(`${name}: not set; where mail goes out it needs ${variables[name].expected}`);
  }
  const { protocol, hostname, port } = new URL(server);
  return {
    kind: 'smtp', host: hostname.replace(/^\[|\]$/g, ''), port: port === '' ? ports[protocol as keyof typeof ports] : Number(port), tls: protocol === 'smtps:',
    ...(user !== undefined && password !== undefined && { user, password }),
  };
}

const bytesInMegabyte = 1024 * 1024;

/**
 * Everything that was set, read and checked.
 *
 * @param settings  what the option --settings named
 * @throws SettingsFault with all faults at once
 */
export async function readSettings(env: Readonly<Record<string, string | undefined>>, settings?: string): Promise<Settings> {
  const faults: string[] = [];
  const given = readVariables(env, faults);
  const data = resolve(given.ACRE_DATA ?? '.');
  const dealers = await readDealers(settings ?? given.ACRE_SETTINGS ?? join(data, 'settings.json'), faults);
  const mail = await mailOf(given, env, data, faults);
  if (given.ACRE_PAGES !== undefined && !(await stat(given.ACRE_PAGES).then((found) => found.isDirectory(), () => false))) faults.push(`ACRE_PAGES: read ${shown(given.ACRE_PAGES)}, expected a folder that is there`);
  if (faults.length > 0) throw new SettingsFault(faults);
  return {
    data, dealers, mail,
    database: given.ACRE_DATABASE,
    keys: given.ACRE_KEYS && resolve(given.ACRE_KEYS),
    listen: given.ACRE_LISTEN!,
    address: given.ACRE_ADDRESS?.replace(/\/?$/, '/'),
    proxies: given.ACRE_PROXIES!,
    sender: given.ACRE_SENDER!,
    bounces: given.ACRE_BOUNCES ?? domainOf({ sender: given.ACRE_SENDER! }),
    mailsPerDay: given.ACRE_MAILS_PER_DAY!, mailsPerMinute: given.ACRE_MAILS_PER_MINUTE!,
    queueMost: given.ACRE_QUEUE_MOST!,
    freeLeast: given.ACRE_FREE_LEAST! * bytesInMegabyte,
    oldestPage: given.ACRE_OLDEST_PAGE!,
    metrics: given.ACRE_METRICS,
    pages: given.ACRE_PAGES && resolve(given.ACRE_PAGES),
    log: given.ACRE_LOG!,
  };
}
