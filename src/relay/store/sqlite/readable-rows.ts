import type { Database } from 'better-sqlite3';

export type Row = Record<string, unknown>;
type Key = number | string;

interface Wanted {
  table: string;
  /** A column by which the table itself is in order. */
  key: string;
  columns: readonly string[];
}

/** Signs of a text that are looked at to find its middle, and how many of each there are. */
const [signs, codes] = [6, 128];
/** Pieces into which the gap between two rows is taken apart, at most: what is damaged is a page of a disk, or a few. */
const mostPieces = 500;

const numberOf = (text: string) => Array.from({ length: signs }, (_, place) => Math.min(codes - 1, text.charCodeAt(place) || 0)).reduce((sum, code) => sum * codes + code, 0);
const textOf = (number: number) => Array.from({ length: signs }, (_, place) => String.fromCharCode(Math.floor(number / codes ** (signs - 1 - place)) % codes)).join('');

/** What lies between two keys, itself none of both; undefined where nothing does. */
function between(low: Key, high: Key): Key | undefined {
  if (typeof low === 'number' && typeof high === 'number') return high - low > 1 ? Math.floor((low + high) / 2) : undefined;
  const [from, to] = [numberOf(String(low)), numberOf(String(high))];
  return to - from > 1 ? textOf(Math.floor((from + to) / 2)) : undefined;
}

/**
 * Reads a table of a damaged file from both ends, and where neither gets on, from the middle of what is left between them,
 * and so on.
 *
 * @param onGap  hears of every place where there may be a row that can't be read
 */
export function* readableRows(db: Database, { table, key, columns }: Wanted, onGap: () => void): Iterable<Row> {
  const chosen = (order: 'ASC' | 'DESC') => db.prepare<[Key, Key], Row>(`
    SELECT ${[`${key} AS its_key`, ...columns].join(', ')} FROM ${table} NOT INDEXED WHERE ${key} > ? AND ${key} < ? ORDER BY ${key} ${order}`);
  const statements = { ASC: chosen('ASC'), DESC: chosen('DESC') };
  let reached: Key;
  let isWhole: boolean;

  function* from(order: 'ASC' | 'DESC', low: Key, high: Key): Iterable<Row> {
    reached = order === 'ASC' ? low : high;
    isWhole = false;
    try {
      for (const { its_key: at, ...row } of statements[order].iterate(low, high)) {
        reached = at as Key;
        yield row;
      }
      isWhole = true;
    } catch (error) {
      if (!/^SQLITE_(CORRUPT|NOTADB|IOERR)/.test(String((error as { code?: unknown }).code))) throw error;
    }
  }

  const isText = key !== 'rowid' && key !== 'seq';
  const left: [Key, Key][] = [isText ? ['', textOf(codes ** signs - 1)] : [Number.MIN_SAFE_INTEGER, Number.MAX_SAFE_INTEGER]];
  for (let pieces = 0; left.length > 0; pieces++) {
    let [low, high] = left.shift()!;
    yield* from('ASC', low, high);
    if (isWhole!) continue;
    low = reached!;
    yield* from('DESC', low, high);
    if (isWhole!) continue;
    high = reached!;
    const middle = pieces < mostPieces ? between(low, high) : undefined;
    if (middle === undefined) onGap();
    else left.push([middle, high], [low, typeof middle === 'number' ? middle + 1 : `${middle}\0`]);
  }
}
