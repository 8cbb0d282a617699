import { requestsOfLines } from '../../demand/of-lines.ts';
import { RequestsUnreadable, type Requests } from '../../demand/requests.ts';
import { lines } from './lines.ts';

const isDatabase = (path: string) => /^postgres(ql)?:\/\//.test(path);

/** Where requests are, and of whose: of all dealers a relay serves where nobody is named. */
export interface RequestsFrom {
  path: string;
  dealer?: string | undefined;
}

/**
 * Requests of files or a relay's folder, or those of a relay's database, which counts them itself.
 *
 * @param program  this command, to ask a relay with
 */
export async function requestsAt({ path, dealer }: RequestsFrom, program: string, most: number, progress: (read: number) => void): Promise<Requests> {
  if (!isDatabase(path)) return requestsOfLines(lines(path, program, dealer), most, progress);
  const { requestsInDatabase } = await import('../../relay/main.ts').catch((error: unknown) => {
    throw (error as { code?: unknown }).code === 'ERR_MODULE_NOT_FOUND' ? new RequestsUnreadable('the relay’s packages aren’t installed; install acre-to-axle with its optional dependencies') : error;
  });
  return requestsInDatabase({ address: path, dealer }, most, progress);
}
