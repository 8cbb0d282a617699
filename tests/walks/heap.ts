import type { CDPSession } from 'playwright-core';

/** What a page holds on to: listeners and nodes as counted, the heap in bytes without code, which grows as it is compiled. */
export interface Held {
  listeners: number;
  nodes: number;
  heap: number;
}

interface Snapshot {
  snapshot: { meta: { node_fields: string[]; node_types: [string[]] } };
  nodes: number[];
}

export async function countsOf(devtools: CDPSession): Promise<Omit<Held, 'heap'>> {
  await devtools.send('Performance.enable');
  await devtools.send('HeapProfiler.collectGarbage');
  const { metrics } = await devtools.send('Performance.getMetrics');
  const of = (wanted: string) => metrics.find(({ name }) => name === wanted)!.value;
  return { listeners: of('JSEventListeners'), nodes: of('Nodes') };
}

/** Waits until what was begun in the background has ended: until the counts stay what they are. */
export async function quiet(devtools: CDPSession): Promise<Omit<Held, 'heap'>> {
  for (let before = await countsOf(devtools); ;) {
    const now = await countsOf(devtools);
    if (now.nodes === before.nodes && now.listeners === before.listeners) return now;
    before = now;
  }
}

async function heapOf(devtools: CDPSession): Promise<number> {
  const chunks: string[] = [];
  const take = ({ chunk }: { chunk: string }) => { chunks.push(chunk); };
  devtools.on('HeapProfiler.addHeapSnapshotChunk', take);
  await devtools.send('HeapProfiler.takeHeapSnapshot', { reportProgress: false });
  devtools.off('HeapProfiler.addHeapSnapshotChunk', take);
  const { snapshot: { meta: { node_fields: fields, node_types: [types] } }, nodes } = JSON.parse(chunks.join('')) as Snapshot;
  const [type, size] = [fields.indexOf('type'), fields.indexOf('self_size')];
  let sum = 0;
  for (let node = 0; node < nodes.length; node += fields.length) if (types[nodes[node + type]!] !== 'code') sum += nodes[node + size]!;
  return sum;
}

export const heldBy = async (devtools: CDPSession): Promise<Held> => ({ ...(await quiet(devtools)), heap: await heapOf(devtools) });
