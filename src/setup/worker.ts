import type { Finding, Slices } from '../sheets/sheets.ts';
import type { Answer, Asked, Call, Stopped } from './calls.ts';
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

function* opened(call: Call): Slices<readonly Finding[]> {
  switch (call.call) {
    case 'open': return yield* desk.open(call.sheet, call.name, call.bytes);
    case 'document':
      try {
        return desk.openDocument(call.name, JSON.parse(call.text.replace(/^\uFEFF/, '')));
      } catch (trouble) {
        return [{ code: 'dealer.faulty', weight: 'fault', facts: { expected: String(trouble), nearest: undefined }, sheet: 'dealer', read: call.name }];
      }
    case 'map': desk.map(call.sheet, call.mapping); return [];
    case 'mend': desk.mend(call.sheet, call.column, call.rows, call.text); return [];
    case 'add': desk.add(call.sheet, call.values); return [];
    case 'undo': desk.undo(); return [];
    case 'set': desk.set(call.base, call.asOf); return [];
    case 'csv': return [];
  }
}

async function answer({ id, call }: Asked): Promise<Answer> {
  if (call.call === 'csv') return { id, text: desk.csv(call.sheet) };
  const goBack = desk.mark();
  const refused = await worked(id, opened(call));
  const view = refused && await worked(id, desk.view());
  if (view && refused) return { id, view: view.result, refused: refused.result };
  goBack();
  return { id, stopped: true };
}

scope.onmessage = ({ data }) => {
  if ('stop' in data) {
    stopped.add(data.stop);
    return;
  }
  last = last.then(async () => scope.postMessage(await answer(data).catch((trouble: unknown): Answer => ({ id: data.id, failed: String(trouble) }))));
};
