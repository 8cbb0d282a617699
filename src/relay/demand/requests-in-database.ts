import pg from 'pg';
import { fewest, type Counted } from '../../demand/counted.ts';
import { canTryAll, type Best, type Bringing, type Coverage } from '../../demand/cover.ts';
import type { Outcome } from '../../demand/outcome.ts';
import { partSize, type Asked, type Requests } from '../../demand/requests.ts';
import * as say from './statements.ts';
import { meant } from './trouble.ts';

/** How long a statement over a million requests may take [ms], and how many rows go over at once. */
const [longest, atOnce] = [600_000, 5_000];
/** The first server that ends sessions for their silence, which judging is. */
const endsSilent = 140_000;
const int8 = 20;

type Each = Asked & { number: number };
type Row = { id: string; buyers: number };

const types = { getTypeParser: ((oid: number, format?: 'text') => (oid === int8 ? Number : pg.types.getTypeParser(oid, format))) as typeof pg.types.getTypeParser };
const columns = (rows: readonly (readonly unknown[])[], many: number) => Array.from({ length: many }, (_, column) => rows.map((row) => row[column]));
const deaf = () => {};

/** One connection that counts: what it makes there nobody else sees, and it goes with it. */
class Counting {
  readonly #client: pg.Client;

  constructor(address: string) {
    this.#client = new pg.Client({ connectionString: address, application_name: 'acre-to-axle demand', statement_timeout: longest, keepAlive: true, types });
    // Told by the statement that fails.
    this.#client.on('error', deaf);
  }

  begin(): Promise<void> {
    return meant('reach', async () => {
      await this.#client.connect();
      await this.#client.query(`SELECT set_config('idle_session_timeout', '0', false) WHERE current_setting('server_version_num')::int >= ${endsSilent}`);
    });
  }

  rows<T extends object>(text: string, values: unknown[] = []): Promise<T[]> {
    return meant('count', async () => (await this.#client.query(text, values)).rows as T[]);
  }

  /** As it stands at one moment, though more comes in. @returns how many requests there are */
  gather(dealer: string | undefined, most: number, progress: (read: number) => void): Promise<number> {
    return meant('count', async () => {
      const ask = async (text: string, values?: unknown[]) => (await this.#client.query(text, values)).rows as { seen: number; different: number }[];
      await ask('BEGIN ISOLATION LEVEL REPEATABLE READ');
      await meant('make', () => ask(say.makeTables));
      const [{ seen, different } = { seen: 0, different: 0 }] = await ask(say.howMany, [dealer ?? null]);
      progress(seen);
      await (different > most ? ask(say.askDrawn, [dealer ?? null, most]) : ask(say.askAll, [dealer ?? null]));
      await ask('COMMIT');
      await ask('ANALYZE pg_temp.asked');
      return seen;
    });
  }

  async put(statement: string, rows: readonly (readonly unknown[])[], many: number) {
    for (let from = 0; from < rows.length; from += atOnce) await this.rows(statement, columns(rows.slice(from, from + atOnce), many));
  }

  async end() {
    await this.#client.query(say.dropTables).catch(deaf);
    await this.#client.end().catch(deaf);
  }
}

async function picksFrom(counting: Counting, would: readonly Coverage[], toBring: number): Promise<Bringing[]> {
  const alone = new Map(would.map(({ machine, serves }) => [machine, serves]));
  const picks: Bringing[] = [];
  while (picks.length < toBring) {
    const [found] = await counting.rows<{ machine: string; more: number }>(say.next, [picks.map(({ machine }) => machine)]);
    if (!found || found.more < fewest) break;
    picks.push({ ...found, alone: alone.get(found.machine)! });
  }
  return picks;
}

async function countedIn(counting: Counting, served: Counted['served'], toBring: number): Promise<Counted> {
  const ordered = async (text: string) => (await counting.rows<Row>(text)).map(({ id, buyers }) => [id, buyers] as const);
  const [beyond] = await counting.rows<{ buyers: number }>(say.beyond);
  const would = await counting.rows<Coverage>(say.would);
  const picks = await picksFrom(counting, would, toBring);
  const [best] = picks.length > 1 && canTryAll(would.length, picks.length) ? await counting.rows<Best>(say.best, [picks.length]) : [];
  return {
    counted: served.stands + served.ask + served.none, served, beyond: beyond!.buyers,
    first: await ordered(say.first), lacked: await ordered(say.lacked), would, picks, ...(best && { best }),
  };
}

/**
 * Requests as a relay's database has them. It puts together what is the same, draws where more differ than are wanted, and
 * counts what was judged; of what buyers said no more comes here than is judged.
 *
 * @param address  `postgres://…`; never told
 * @param dealer  of those the relay serves; all of them where nobody is named
 * @param most  to judge at the most
 * @param progress  hears how many there are
 * @throws RequestsUnreadable with one line for whoever asked
 */
export async function requestsInDatabase({ address, dealer }: { address: string; dealer?: string | undefined }, most: number, progress: (read: number) => void): Promise<Requests<Each>> {
  const counting = new Counting(address);
  await counting.begin();
  let seen = 0;
  return {
    async *parts() {
      seen = await counting.gather(dealer, most, progress);
      for (let last = 0; ;) {
        const part = await counting.rows<Each>(say.part, [last, partSize]);
        if (part.length === 0) return;
        last = part.at(-1)!.number;
        yield part;
      }
    },
    async take(part, outcomes) {
      const judged = part.flatMap(({ number }, index) => (outcomes[index] ? [{ number, ...outcomes[index] }] : []));
      await counting.put(say.putOutcomes, judged.map(({ number, served, first }) => [number, served, first ?? null]), 3);
      await counting.put(say.putLacked, judged.flatMap(({ number, lacked }) => lacked.map((need) => [number, need])), 2);
      await counting.put(say.putWould, judged.flatMap(({ number, served, would }) => (served === 'none' ? would.map((machine) => [number, machine]) : [])), 2);
    },
    async gathered(toBring) {
      await counting.rows(say.lookAtTables);
      const many = new Map((await counting.rows<{ served: Outcome['served'] | 'unreadable'; buyers: number }>(say.servedHow)).map(({ served, buyers }) => [served, buyers]));
      const [stands, ask, none, unreadable] = (['stands', 'ask', 'none', 'unreadable'] as const).map((each) => many.get(each) ?? 0) as [number, number, number, number];
      return { counted: await countedIn(counting, { stands, ask, none }, toBring), seen, unreadable, isInvented: false };
    },
    close: () => counting.end(),
  };
}
