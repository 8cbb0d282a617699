import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openSqlite } from '../../src/relay/store/sqlite/sqlite-store.ts';
import { storeSuite } from './store-suite.ts';

storeSuite('on SQLite', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'store-'));
  const file = join(folder, 'relay.db');
  const opened = () => openSqlite({ file, ballast: 4_096 });
  let store = opened();
  return {
    store,
    async reopen() {
      await store.close();
      store = opened();
      return store;
    },
    async end() {
      await store.close();
      rmSync(folder, { recursive: true });
    },
  };
});
