import { randomUUID } from 'node:crypto';
import { resolve } from 'node:path';
import { clock as wallClock, type Clock } from '../../clock.ts';
import { StoreFull, type StoreBroken } from '../failures.ts';
import type { Store } from '../store.ts';
import { acceptingInto } from './accepting.ts';
import { claimsOf } from './claiming.ts';
import { keepingIn } from './keeping.ts';
import { looksInto } from './looking.ts';
import { open } from './opening.ts';
import { Space } from './space.ts';
import { stopsIn } from './stops.ts';
import { wordsIn } from './words.ts';
import { Writer } from './writer.ts';

/** Kept for need: enough for a queue to end in. */
const usualBallast = 33_554_432;
/** `synchronous` as SQLite numbers it (sqlite.org/pragma.html#pragma_synchronous). */
const full = 2;

export interface SqliteOptions {
  /** Its folder has to be there, on a disk of this machine: no network keeps the locks it needs. */
  file: string;
  clock?: Pick<Clock, 'now'>;
  /** Bytes of ballast; 0 for none. */
  ballast?: number;
  /** Free bytes on the disk. */
  freeBytes?: () => number;
  /** Hears once that the disk failed: the process has to end. */
  onBroken?: (error: StoreBroken) => void;
}

/**
 * Opens a store in one file, for one process.
 *
 * @throws StoreUnusable, with one line that names the file and what to do
 */
export function openSqlite({ file: named, clock = wallClock, ballast = usualBallast, freeBytes, onBroken = () => {} }: SqliteOptions): Store {
  const file = resolve(named);
  const { db, lock } = open(file, clock.now());
  const space = new Space(file, ballast, freeBytes);
  space.lay();
  const writer = new Writer(db, () => space.letGo(), onBroken);
  const stops = stopsIn(db);
  const accept = acceptingInto(db, stops);
  const words = wordsIn(db);
  const claims = claimsOf(db, stops, words, randomUUID());
  const looks = looksInto(db);
  const keeping = keepingIn(db);
  /** What is read is answered as a promise too: on another store it takes its time. */
  const read = async <T>(job: () => T) => writer.read(job);

  return {
    async accept(request, takes, now, likeSince) {
      // Once for all that are written together: the line leaves more room than they can take.
      if (writer.isIdle && !space.roomForNew()) throw new StoreFull('The disk is nearly full.');
      return writer.write(() => accept(request, takes, now, likeSince), { needed: false, mayWait: true });
    },
    claim: (most, now, crashesHeld, except) => writer.write(() => claims.claim(most, now, crashesHeld, except)),
    settle: ({ message, fence }, outcome, now, word) => writer.write(() => claims.settle(message, fence, outcome, now, word)),
    tell: (request, word, now) => writer.write(() => words.tell(request, word, now)),
    undelivered: () => read(() => words.undelivered()),
    release: (now, silentFor) => writer.write(() => claims.release(now, silentFor)),
    beat: (now) => writer.write(() => claims.beat(now)),
    nextDue: () => read(() => claims.nextDue()),
    depth: (now) => read(() => looks.depth(now)),
    waiting: () => read(() => looks.waiting()),
    confirm: (token, now) => writer.write(() => stops.confirm(token, now)),
    stop: (token, why, now) => writer.write(() => stops.stop(token, why, now)),
    suppress: (recipient, scope, why, now, until) => writer.write(() => stops.suppress(recipient, scope, why, now, until)),
    isStopped: (recipient, dealer, now) => read(() => stops.isStopped(recipient, dealer, now)),
    held: () => read(() => looks.held()),
    sendAgain: (messages, now) => writer.write(() => keeping.sendAgain(messages, now)),
    keepCatalogue: (catalogue, now) => writer.write(() => keeping.keepCatalogue(catalogue, now)),
    catalogueOf: (dealer, version) => read(() => looks.catalogueOf(dealer, version)),
    exportOf: (recipient, address) => read(() => keeping.exportOf(recipient, address)),
    async erase(recipient, address, now) {
      const erased = await writer.write(() => keeping.erase(recipient, address, now));
      // The log still holds the pages as they were.
      writer.read(() => db.pragma('wal_checkpoint(TRUNCATE)'));
      return erased;
    },
    async tidy(now, keep) {
      while (await writer.write(() => keeping.tidy(now, keep)));
    },
    async *statistics(dealer) {
      for (let after = 0; ;) {
        const piece = writer.read(() => looks.statistics(after, dealer));
        if (piece.length === 0) return;
        after = piece.at(-1)!.seq;
        for (const { dealer, day, kind, answers } of piece) yield { dealer, day, kind, answers: JSON.parse(answers) };
      }
    },
    spend: (word, until, now) => writer.write(() => keeping.spend(word, until, now)),
    health: () => read(() => ({
      kind: 'sqlite' as const,
      version: db.prepare('SELECT sqlite_version()').pluck().get() as string,
      durable: db.pragma('synchronous', { simple: true }) === full && db.pragma('journal_mode', { simple: true }) === 'wal',
      freeBytes: space.free(),
    })),
    async close() {
      writer.close();
      db.close();
      lock.close();
    },
  };
}
