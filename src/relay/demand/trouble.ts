import { RequestsUnreadable } from '../../demand/requests.ts';
import { codeOf } from '../store/postgres/trouble.ts';

/** What was being done: reaching the database, making tables for the counting, or the counting. */
type Doing = 'reach' | 'make' | 'count';

/** By what the server said (SQLSTATE; PostgreSQL's documentation, appendix A). */
function complaintOf(code: string | undefined, doing: Doing): string {
  switch (code) {
    case undefined: return 'the database can’t be reached, or went away';
    case '28P01': case '28000': return 'the database doesn’t take this user and password';
    case '3D000': return 'there is no such database';
    case '3F000': case '42P01': return 'this database holds no relay’s requests';
    case '25006': return 'this server only lets itself be read, and counting needs temporary tables: name the one it is a copy of';
    case '42501': return doing === 'make'
      ? 'this role may not make temporary tables, which the counting needs; the owner of the database may allow it: GRANT TEMPORARY ON DATABASE … TO …'
      : 'this role may not read acre.statistics; the relay’s own role may';
    case '53100': return 'the database’s disk is full';
    default: return `the database can’t do it now, ${code}`;
  }
}

/** Does it; what the server says against it comes as one line without anything that is stored or in the address. @throws RequestsUnreadable */
export async function meant<T>(doing: Doing, job: () => Promise<T>): Promise<T> {
  try {
    return await job();
  } catch (error) {
    if (error instanceof RequestsUnreadable) throw error;
    throw new RequestsUnreadable(complaintOf(codeOf(error), doing), { cause: error });
  }
}
