import { pino, type DestinationStream } from 'pino';
import type { Settings } from './settings/read-settings.ts';

/** What may be in a line: figures, and words of ours or of the settings. Nothing that came in with a request. */
export type Fields = Readonly<Record<string, string | number | boolean | undefined>>;

/** Lines of JSON for whoever runs the relay, one an event; no personal data in any. */
export interface Log {
  debug(event: string, fields?: Fields): void;
  info(event: string, fields?: Fields): void;
  warn(event: string, fields?: Fields): void;
  /** What was thrown is told by its name, its code and where, never by its message: that may hold what was read. */
  error(event: string, thrown: unknown, fields?: Fields): void;
}

const mostFrames = 6;
function described(thrown: unknown): Fields {
  if (thrown === undefined) return {};
  if (!(thrown instanceof Error)) return { thrown: typeof thrown };
  const { code } = thrown as { code?: unknown };
  const frames = (thrown.stack ?? '').split('\n').filter((line) => /^\s+at /.test(line)).slice(0, mostFrames).map((line) => line.trim());
  return { thrown: thrown.name, ...(typeof code === 'string' && { code }), at: frames.join(' < ') };
}

const longestField = 600;
/** A second net: what looks like an address of a person is left out, and no field makes a line longer than a screen. */
const plain = (fields: Fields): Fields => Object.fromEntries(Object.entries(fields).map(([name, value]) =>
  [name, typeof value === 'string' ? value.replace(/[^\s<>@]+@[^\s<>@]+/g, '(address)').slice(0, longestField) : value]));

/** @param to  standard output where it isn't said */
export function logTo(level: Settings['log'], to?: DestinationStream): Log {
  const destination = to ?? pino.destination({ dest: 1, sync: true });
  // A full disk behind the output must not stop mail: a line is lost, nothing else.
  if (!to) (destination as ReturnType<typeof pino.destination>).on('error', () => undefined);
  const lines = pino({ level, base: undefined, timestamp: pino.stdTimeFunctions.isoTime, formatters: { level: (label) => ({ level: label }) } }, destination);
  return {
    debug: (event, fields = {}) => lines.debug(plain(fields), event),
    info: (event, fields = {}) => lines.info(plain(fields), event),
    warn: (event, fields = {}) => lines.warn(plain(fields), event),
    error: (event, thrown, fields = {}) => lines.error(plain({ ...fields, ...described(thrown) }), event),
  };
}
