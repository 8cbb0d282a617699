import { afterAll, beforeAll } from 'vitest';
import { openPostgres } from '../../src/relay/store/postgres/postgres-store.ts';
import { postgresServer, type TestServer } from '../support/postgres.ts';
import { storeSuite } from './store-suite.ts';

let server: TestServer;
/** A database that has its tables, of which each test has a copy. */
let made: string;
beforeAll(async () => {
  server = await postgresServer();
  made = await server.database();
  await (await openPostgres({ address: server.address(made) })).close();
}, 60_000);
afterAll(() => server?.end());

storeSuite('on PostgreSQL', async () => {
  const database = await server.database(made);
  const opened = () => openPostgres({ address: server.address(database), name: 'one' });
  let store = await opened();
  return {
    store,
    async reopen() {
      await store.close();
      store = await opened();
      return store;
    },
    async end() {
      await store.close();
      await server.drop(database);
    },
  };
});
