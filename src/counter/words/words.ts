import type { QueueStatus } from '../queue/status.ts';
import type { StorageWhy } from '../queue/storage-trouble.ts';
import type { SectionId } from '../sections.ts';

/** What the counter's page says to whoever works there, and what a customer reads on it. What is missing fails the type check. */
export interface CounterWords {
  language: string;
  title: string;
  languageLabel: string;
  loading: string;
  /** What keeps the counter from working at all. */
  trouble: { settings: string; stock: string; tryAgain: string };
  stock: {
    /** Day of the list, as it is written in a place. */
    of(day: string): string;
    /** The same, where it is the copy of the last time there was a network. */
    copyOf(day: string): string;
    old(day: string): string;
    askHeading: string;
    ask(day: string): string;
    use: string;
  };
  update: {
    waits: string; now: string; ask: string; sure: string;
    /** The relay takes nothing from this version any more. */
    outdated: string;
  };
  offline: { kept: string; notKept: string };
  start: { heading: string; explained: string; begin: string; open: string; form: string; cover: string };
  /** A page that went away while a customer was served left his answers, and until what time of the day they can be had back. */
  draft: { left(time: string): string; take: string; unreadable: string };
  /** Nobody is served: nothing is to be seen, and staff's PIN ends it where there is one. */
  covered: { heading: string; explained: string; end: string };
  intake: {
    heading: string; name: string; nameHint: string;
    ways: Readonly<Record<'sheet' | 'steps', string>>;
    waysLabel: string;
    /** What of an intake is on show. */
    parts: Readonly<Record<'ask' | 'send' | 'take', string>>;
    partsLabel: string;
    notes: string; notesHint: string;
    park: string; next: string;
    parked(count: number): string; resume(name: string): string; remove(name: string): string; showParked: string;
    /** Who is thrown away next, by which time of the day; and who was, since the page was opened. */
    goes(count: number, time: string): string; thrown(count: number): string;
    unnamed: string; notParked: string; unreadable: string;
    keysHint: string;
  };
  sections: Readonly<Record<SectionId, string>>;
  sectionsLabel: string;
  shortcut(key: string): string;
  outcome: { heading: string; reckoning: string; nothingYet: string; ask: string; out(count: number): string; whole: string; reasons: string; units(count: number): string };
  send: {
    heading: string; explained: string; noRelay: string; noKey: string;
    address: string; addressHint: string; addressFault: Readonly<Record<'missing' | 'wrong', string>>; near(domain: string): string;
    consentHeading: string; consentFault: string;
    /** Said by the customer, in his words, each for itself. */
    consent: Readonly<Record<'mail' | 'dealerCopy' | 'statistics', (dealer: string) => string>>;
    contact: string; contactHint: string; name: string; nameFault: string; phone: string; phoneFault: string; goodTime: string;
    goodTimes: Readonly<Record<'any' | 'morning' | 'midday' | 'afternoon' | 'evening', string>>;
    initials: string; language: string; privacy: string; keep: string; keeping: string;
    kept(last: string): string; keptExplained: string;
    notKept: string; another: string;
    /** The page makes room for the next customer by itself, and how that is stopped. */
    clears: string; clearsIn(seconds: number): string;
  };
  /** Why nothing can be kept on this device, and what to do. */
  storage: Readonly<Record<StorageWhy, string>>;
  take: { heading: string; print: string; printHint: string; printed: string; notFits: string; noPage: string };
  waiting: {
    heading: string;
    count(count: number): string;
    /** How old the oldest is, in words. */
    oldest(age: string): string;
    minutes(count: number): string; hours(count: number): string; days(count: number): string;
    none: string; explained: string; overdue: string;
    states: Readonly<Record<'queued' | 'sending' | 'needs-staff' | 'newer' | 'damaged', string>>;
    /** Why nothing gets out at the moment. */
    way: Readonly<Record<Extract<NonNullable<QueueStatus['trouble']>, { of: 'relay' }>['why'], string>>;
    sendNow: string; setUp: string; setUpDone: string; setUpFailed: string; notPersisted: string;
    save: string; saved: string; drop: string; read: string; readDone(count: number): string; readFaults(count: number): string;
    row(age: string, last: string): string; refused(code: string): string; again: string; back: string;
  };
  /** Taking the counter off a device. */
  retire: {
    heading: string; explained: string; go: string; withParked: string;
    waiting(count: number): string; parked(count: number): string; retired: string; 'other-window': string;
  };
  pin: {
    heading: Readonly<Record<'set' | 'unlock' | 'anew', string>>;
    label: string; again: string; explained: Readonly<Record<'set' | 'unlock' | 'anew', string>>;
    set: string; unlock: string;
    wrong(left: number): string; locked(minutes: number): string; short: string; differ: string;
    forgotten: string; wipe: string; cancel: string; lock: string;
  };
  idle: { heading: string; left(seconds: number): string; explained: string; stay: string; over: string };
}
