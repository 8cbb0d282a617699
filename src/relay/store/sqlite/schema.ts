import type { Database } from 'better-sqlite3';
import { StoreUnusable } from '../failures.ts';

/** Marks a file as one of ours (PRAGMA application_id): the letters "axle". */
export const applicationId = 0x61_78_6c_65;

/** All that is copied of a store, in the order in which one refers to another. Counts are the triggers' to make. */
export const copiedTables = ['requests', 'keys', 'messages', 'changes', 'stops', 'buckets', 'spent', 'catalogues', 'statistics'] as const;
export type CopiedTable = (typeof copiedTables)[number];

/**
 * How a file of one version becomes one of the next; the first makes it out of nothing. What was released is never changed,
 * only appended to.
 *
 * Times are milliseconds since 1970. `digest` covers what a mail is made of and for whom, so that a bit that fell over on a
 * disk sends nothing to a stranger. A key outlives its request; `fingerprint` is '' where what it stood for was erased.
 * Every change of a state is noted, and how many there are of each is kept: counting them would read the whole file.
 */
export const migrations: readonly string[] = [`
  CREATE TABLE requests (
    seq INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    dealer TEXT NOT NULL,
    likeness TEXT NOT NULL,
    body TEXT,
    accepted INTEGER NOT NULL
  ) STRICT;
  CREATE INDEX requests_alike ON requests (likeness, accepted);

  CREATE TABLE keys (
    id TEXT PRIMARY KEY,
    fingerprint TEXT NOT NULL,
    accepted INTEGER NOT NULL
  ) STRICT, WITHOUT ROWID;
  CREATE INDEX keys_age ON keys (accepted);

  CREATE TABLE messages (
    seq INTEGER PRIMARY KEY,
    request INTEGER NOT NULL REFERENCES requests (seq),
    role TEXT NOT NULL CHECK (role IN ('buyer', 'dealer', 'confirm')),
    dealer TEXT NOT NULL,
    destination TEXT NOT NULL,
    recipient TEXT NOT NULL,
    message_id TEXT NOT NULL,
    token TEXT NOT NULL,
    token_hash TEXT NOT NULL UNIQUE,
    digest TEXT NOT NULL,
    state TEXT NOT NULL CHECK (state IN ('unconfirmed', 'queued', 'sending', 'unsure', 'held', 'sent', 'refused', 'expired', 'suppressed', 'cancelled')),
    accepted INTEGER NOT NULL,
    due INTEGER NOT NULL,
    changed INTEGER NOT NULL,
    attempts INTEGER NOT NULL DEFAULT 0,
    crashes INTEGER NOT NULL DEFAULT 0,
    was_unsure INTEGER NOT NULL DEFAULT 0,
    fence INTEGER NOT NULL DEFAULT 0,
    worker TEXT,
    beat INTEGER,
    reason TEXT,
    reply TEXT
  ) STRICT;
  CREATE INDEX messages_request ON messages (request);
  CREATE INDEX messages_recipient ON messages (recipient);
  CREATE INDEX messages_due ON messages (due) WHERE state IN ('queued', 'unsure');
  CREATE INDEX messages_age ON messages (accepted) WHERE state IN ('queued', 'unsure', 'sending');
  CREATE INDEX messages_sending ON messages (beat) WHERE state = 'sending';
  CREATE INDEX messages_aside ON messages (state, changed) WHERE state IN ('unconfirmed', 'held');
  CREATE INDEX messages_ended ON messages (changed) WHERE state IN ('sent', 'refused', 'expired', 'suppressed', 'cancelled');

  CREATE TABLE changes (
    message INTEGER NOT NULL,
    at INTEGER NOT NULL,
    state TEXT NOT NULL,
    reason TEXT
  ) STRICT;
  CREATE INDEX changes_message ON changes (message);
  CREATE TABLE counts (state TEXT PRIMARY KEY, count INTEGER NOT NULL) STRICT, WITHOUT ROWID;
  CREATE TRIGGER message_made AFTER INSERT ON messages BEGIN
    INSERT INTO changes VALUES (new.seq, new.changed, new.state, new.reason);
    INSERT INTO counts VALUES (new.state, 1) ON CONFLICT DO UPDATE SET count = count + 1;
  END;
  CREATE TRIGGER message_changed AFTER UPDATE OF state ON messages WHEN old.state <> new.state BEGIN
    INSERT INTO changes VALUES (new.seq, new.changed, new.state, new.reason);
    UPDATE counts SET count = count - 1 WHERE state = old.state;
    INSERT INTO counts VALUES (new.state, 1) ON CONFLICT DO UPDATE SET count = count + 1;
  END;
  CREATE TRIGGER message_deleted AFTER DELETE ON messages BEGIN
    DELETE FROM changes WHERE message = old.seq;
    UPDATE counts SET count = count - 1 WHERE state = old.state;
  END;

  CREATE TABLE stops (
    recipient TEXT NOT NULL,
    scope TEXT NOT NULL,
    why TEXT NOT NULL,
    since INTEGER NOT NULL,
    until INTEGER,
    PRIMARY KEY (recipient, scope)
  ) STRICT, WITHOUT ROWID;

  CREATE TABLE buckets (bucket TEXT PRIMARY KEY, level REAL NOT NULL, at INTEGER NOT NULL, full_at INTEGER NOT NULL) STRICT, WITHOUT ROWID;
  CREATE INDEX buckets_full ON buckets (full_at);
  CREATE TABLE spent (word TEXT PRIMARY KEY, until INTEGER NOT NULL) STRICT, WITHOUT ROWID;

  CREATE TABLE catalogues (
    seq INTEGER PRIMARY KEY,
    dealer TEXT NOT NULL,
    hash TEXT NOT NULL,
    version TEXT,
    as_of TEXT NOT NULL,
    text TEXT NOT NULL,
    seen INTEGER NOT NULL,
    UNIQUE (dealer, hash)
  ) STRICT;
  CREATE INDEX catalogues_seen ON catalogues (dealer, seen);

  CREATE TABLE statistics (
    seq INTEGER PRIMARY KEY,
    dealer TEXT NOT NULL,
    day TEXT NOT NULL,
    kind TEXT NOT NULL,
    answers TEXT NOT NULL
  ) STRICT;
`];

/**
 * Changes nothing.
 *
 * @throws StoreUnusable where a newer release wrote it, or another program
 */
export function checkOwner(db: Database, file: string, steps: readonly string[] = migrations): void {
  const version = db.pragma('user_version', { simple: true }) as number;
  const tables = db.prepare('SELECT count(*) FROM sqlite_schema').pluck().get() as number;
  const mark = db.pragma('application_id', { simple: true });
  if (tables > 0 && mark !== applicationId) throw new StoreUnusable(`${file} belongs to another program: name another file.`);
  if (version > steps.length) {
    throw new StoreUnusable(`${file} was written by a newer release (version ${version} of the file, this one knows ${steps.length}): install that release, or name another file.`);
  }
}

/** Brings a file to the newest version, all or nothing. @throws StoreUnusable as {@link checkOwner} does */
export function migrate(db: Database, file: string, steps: readonly string[] = migrations): void {
  checkOwner(db, file, steps);
  const version = db.pragma('user_version', { simple: true }) as number;
  db.transaction(() => {
    for (const step of steps.slice(version)) db.exec(step);
    db.pragma(`application_id = ${applicationId}`);
    db.pragma(`user_version = ${steps.length}`);
  }).immediate();
}

const plan = (db: Database) => JSON.stringify(db.prepare('SELECT type, name, tbl_name, sql FROM sqlite_schema ORDER BY type, name').all());

/** Whether tables, indexes and triggers are what they have to be, held against a file that was just made. */
export const isAsMade = (db: Database, fresh: Database): boolean => {
  migrate(fresh, 'a new file');
  return plan(db) === plan(fresh);
};
