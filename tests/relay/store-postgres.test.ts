import { afterAll, beforeAll } from 'vitest';
import { openPostgres } from '../../src/relay/store/postgres/postgres-store.ts';
import { postgresServer, type TestServer } from '../support/postgres.ts';
import { storeSuite } from './store-suite.ts';

let server: TestServer;
let database: string;
beforeAll(async () => {
  server = await postgresServer();
  database = await server.database();
}, 60_000);
afterAll(() => server?.end());

storeSuite('on PostgreSQL', async () => {
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
      // As good as a new one, and sooner there.
      const tables = ['messages', 'requests', 'keys', 'changes', 'stops', 'buckets', 'spent', 'catalogues', 'statistics', 'counts'].map((table) => `acre.${table}`);
      await server.ask([...tables, 'acre_jobs.job'].map((table) => `DELETE FROM ${table}`).join('; '), database);
    },
  };
});
