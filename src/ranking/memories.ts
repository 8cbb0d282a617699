import type { Machine } from '../catalogue/catalogue.ts';
import type { Need } from '../needs/need.ts';
import type { World } from './candidate.ts';
import { emptyMemory, type Ledger, type Memory } from './remember.ts';

interface OfWorld {
  ledger: Ledger;
  sorts: Map<string, WeakMap<Machine, Memory<unknown>>>;
}

/** Results remembered of one world at the most, a few ten megabytes: many buyers in a row must not fill a page's memory. */
const most = 20_000;

const worlds = new WeakMap<World, OfWorld>();
const demands = new WeakMap<Need, string>();

/** What a need demands, as text: how it was come by doesn't matter to whoever judges it. */
export function demandOf(need: Need): string {
  const known = demands.get(need);
  if (known !== undefined) return known;
  const { working: _working, from: _from, ...demand } = need;
  const text = JSON.stringify(demand);
  demands.set(need, text);
  return text;
}

/** Where the results of one sort of reckoning are, for a machine and all its units. */
export type Memories<T> = (machine: Machine) => Memory<T>;

/**
 * Where results of one sort of reckoning are remembered, machine by machine.
 *
 * @param sort  all that the results hang on besides world, machine and build, as text
 */
export function memoriesOf<T>(world: World, sort: string): Memories<T> {
  const known = worlds.get(world);
  const { ledger, sorts } = known && known.ledger.kept < most ? known : { ledger: { kept: 0 }, sorts: new Map<string, WeakMap<Machine, Memory<unknown>>>() };
  worlds.set(world, { ledger, sorts });
  const machines = sorts.get(sort) ?? new WeakMap<Machine, Memory<unknown>>();
  sorts.set(sort, machines);
  return (machine) => {
    const memory = machines.get(machine) ?? emptyMemory(ledger);
    machines.set(machine, memory);
    return memory as Memory<T>;
  };
}
