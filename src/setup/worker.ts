import { decode, type Finding, type Slices } from '../sheets/sheets.ts';
import type { Answer, Asked, Call, Change, Stopped } from './calls.ts';
import { Desk } from './desk.ts';

/** How long it works before it looks whether it was told to stop [ms]. */
const slice = 50;

/** What of a worker is used here; the types of a page and of a worker don't go together. */
interface Scope {
  postMessage(message: Answer): void;
  onmessage: ((event: { data: Asked | Stopped }) => void) | null;
}
const scope = globalThis as unknown as Scope;

const parameters = new URL(import.meta.url).searchParams;
const desk = new Desk(parameters.get('asOf') ?? '', (parameters.get('languages') ?? '').split(','));
const stopped = new Set<number>();
let last: Promise<void> = Promise.resolve();

/** Messages that have come meanwhile are taken before this resolves. */
const pause = () => new Promise<void>((resolve) => { setTimeout(resolve, 0); });

/** @returns undefined where it was told to stop */
async function worked<T>(id: number, work: Slices<T>): Promise<{ result: T } | undefined> {
  for (let since = performance.now(); ;) {
    const next = work.next();
    if (next.done) return { result: next.value };
    if (performance.now() - since < slice) continue;
    scope.postMessage({ id, ...next.value });
    await pause();
    if (stopped.delete(id)) return undefined;
    since = performance.now();
  }
}

function document(name: string, bytes: Uint8Array): readonly Finding[] {
  const { text, findings } = decode(bytes, 'machines');
  if (text === undefined) return findings;
  try {
    return desk.openDocument(name, JSON.parse(text));
  } catch (trouble) {
    return [{ code: 'dealer.faulty', weight: 'fault', facts: { expected: String(trouble), nearest: undefined }, sheet: 'dealer', read: name }];
  }
}

function* changed(call: Change): Slices<readonly Finding[]> {
  switch (call.call) {
    case 'open': return yield* desk.open(call.sheet, call.name, call.bytes);
    case 'document': return document(call.name, call.bytes);
    case 'part': return yield* desk.part(call.sheet, call.separator);
    case 'swap': desk.swap(call.sheet); break;
    case 'map': desk.map(call.sheet, call.mapping); break;
    case 'decimals': desk.decimals(call.sheet, call.mark); break;
    case 'mend': desk.mend(call.sheet, call.column, call.rows, call.text); break;
    case 'fill': desk.fill(call.sheet, call.rows, call.values); break;
    case 'fillFrom': desk.fillFrom(call.sheet, call.field, call.column); break;
    case 'partYears': desk.partYears(call.sheet, call.column); break;
    case 'rewrite': desk.rewrite(call.sheet, call.row, call.line); break;
    case 'drop': desk.drop(call.sheet, call.rows); break;
    case 'add': desk.add(call.sheet, call.values); break;
    case 'undo': desk.undo(); break;
    case 'set': desk.set(call.base, call.asOf, call.withoutSold); break;
  }
  return [];
}

function wanted(call: Call): string | undefined {
  switch (call.call) {
    case 'csv': return desk.csv(call.sheet);
    case 'line': return desk.line(call.sheet, call.row);
    case 'catalogue': return JSON.stringify(desk.catalogue, undefined, call.spaced ? 1 : 0) ?? '';
    default: return undefined;
  }
}

async function answer({ id, call }: Asked): Promise<Answer> {
  const text = wanted(call);
  if (text !== undefined) return { id, text };
  const goBack = desk.mark();
  try {
    const refused = await worked(id, changed(call as Change));
    const view = refused && await worked(id, desk.view());
    if (view && refused) return { id, view: view.result, refused: refused.result };
  } catch (trouble) {
    goBack();
    return { id, failed: String(trouble) };
  }
  goBack();
  return { id, stopped: true };
}

scope.onmessage = ({ data }) => {
  if ('stop' in data) {
    stopped.add(data.stop);
    return;
  }
  last = last.then(async () => scope.postMessage(await answer(data)));
};
