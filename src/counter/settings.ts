import { bring, keep, parsed } from './brought.ts';

/** What a dealer says of his counter, in a file beside the page; all but the catalogue may be left out. */
export interface Settings {
  /** Address of his catalogue, from the page. */
  catalogue: string;
  /** Address of the relay that mails shortlists; without it nothing is sent from here. */
  relay?: string;
  /** What the relay gave this device. */
  deviceToken?: string;
  /** Address of the page on his site whose wizard begins from links; without it no code is shown. */
  page?: string;
  /** Seconds of quiet before it is asked whether anybody is there, or false where it never is. */
  idle: number | false;
  /** Hours after which a parked customer is thrown away: a working day. */
  parkedHours: number;
  /** Language it begins in; without it, the browser's. */
  language?: string;
  /** What comes out of the printer. */
  paper: 'letter' | 'a4';
}

export const idleBounds = { from: 30, to: 300, usual: 90 } as const;
export const parkedBounds = { from: 1, to: 24, usual: 12 } as const;

/** A fault of a dealer's settings: which, and what was expected. */
export interface SettingsFault {
  key: string;
  expected: string;
}

const isUrl = (text: string, base: string) => {
  try {
    return /^https?:$/.test(new URL(text, base).protocol);
  } catch {
    return false;
  }
};

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === 'object' && value !== null && !Array.isArray(value);

const texts = ['catalogue', 'relay', 'page'] as const;
const known: readonly string[] = [...texts, 'deviceToken', 'language', 'idle', 'parkedHours', 'paper'];

const isWithin = (value: unknown, { from, to }: { from: number; to: number }) => typeof value === 'number' && value >= from && value <= to;

/** What one key has to be, or undefined where it is. */
function expected(key: string, value: unknown, base: string): string | undefined {
  if (!known.includes(key) && !key.startsWith('x-')) return `one of ${known.join(', ')}`;
  if ((texts as readonly string[]).includes(key)) return typeof value === 'string' && isUrl(value, base) ? undefined : 'an address';
  if (key === 'deviceToken' || key === 'language') return typeof value === 'string' && value !== '' ? undefined : 'a text';
  if (key === 'paper') return value === 'letter' || value === 'a4' ? undefined : 'letter or a4';
  if (key === 'parkedHours') return isWithin(value, parkedBounds) ? undefined : `${parkedBounds.from} to ${parkedBounds.to} hours`;
  if (key !== 'idle') return undefined;
  return value === false || isWithin(value, idleBounds) ? undefined : `${idleBounds.from} to ${idleBounds.to} seconds, or false`;
}

/**
 * Reads a dealer's settings; addresses come out whole.
 *
 * @param base  where they lie, from which other addresses are told
 */
export function readSettings(json: unknown, base: string): { settings: Settings } | { faults: SettingsFault[] } {
  if (!isObject(json)) return { faults: [{ key: '', expected: 'an object with at least a catalogue' }] };
  const faults = Object.entries(json).flatMap(([key, value]) => {
    const wanted = expected(key, value, base);
    return wanted ? [{ key, expected: wanted }] : [];
  });
  if (json.catalogue === undefined) faults.push({ key: 'catalogue', expected: 'an address' });
  if (faults.length > 0) return { faults };
  const { idle = idleBounds.usual, parkedHours = parkedBounds.usual, paper = 'letter', ...rest } = json as unknown as Partial<Settings> & Pick<Settings, 'catalogue'>;
  const whole = Object.fromEntries(Object.entries(rest).map(([key, value]) => [key, (texts as readonly string[]).includes(key) ? new URL(value as string, base).href : value]));
  return { settings: { ...whole, idle, parkedHours, paper } as Settings };
}

/** The settings beside the page: those of now, or the copy of the last that could be read. */
export async function settingsAt(address: string): Promise<Settings | undefined> {
  for await (const brought of bring(address)) {
    const read = readSettings(parsed(brought.text), address);
    if ('settings' in read) {
      await keep(address, brought);
      return read.settings;
    }
    console.warn(`acre-to-axle: ${address}\n${read.faults.map(({ key, expected: wanted }) => `${key}: expected ${wanted}`).join('\n')}`);
  }
  return undefined;
}
