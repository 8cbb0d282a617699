import { StoreAway, StoreBroken, StoreFull } from '../failures.ts';

/** What the server itself said, by its code (SQLSTATE; PostgreSQL's documentation, appendix A), or undefined where the way to it is at fault. */
export function codeOf(error: unknown): string | undefined {
  const { code, severity } = (error ?? {}) as { code?: unknown; severity?: unknown };
  return typeof severity === 'string' && typeof code === 'string' ? code : undefined;
}

const full = /^53100$/;
/** The server read back other bytes than it wrote, or couldn't write. */
const broken = /^(?:58030|XX001|XX002)$/;
/** Connections, operators, resources, read-only after a change of primaries, time limits, and who may log in. */
const away = /^(?:08|57P|53|25006|25P0[23]|55P03|57014|28|3D000)/;
/** Two transactions stood in each other's way: one of them is to be done again. */
const again = /^(?:40001|40P01)$/;

export const isWorthAnotherTry = (error: unknown) => again.test(codeOf(error) ?? '');

/** What a failure means for whoever asked. No message of the server is passed on: it may hold what was stored. */
export function told(error: unknown): unknown {
  const code = codeOf(error);
  const cause = { cause: error };
  if (code === undefined) return new StoreAway('The database can’t be reached.', cause);
  if (full.test(code)) return new StoreFull('The database’s disk is full.', cause);
  if (broken.test(code)) return new StoreBroken(`The disk failed under the database (${code}).`, cause);
  if (away.test(code) || again.test(code)) return new StoreAway(`The database can’t do it now (${code}).`, cause);
  return error;
}
