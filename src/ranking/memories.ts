import type { Machine } from '../catalogue/catalogue.ts';
import type { Need } from '../needs/need.ts';
import type { World } from './candidate.ts';
import { emptyMemory, type Memory } from './remember.ts';

type OfMachines = WeakMap<Machine, Memory<unknown>>;

/** Sorts of reckoning remembered of one world at the most: many buyers in a row must not fill a page's memory. */
const most = 4_000;

const worlds = new WeakMap<World, Map<string, OfMachines>>();
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
  const all = worlds.get(world) ?? new Map<string, OfMachines>();
  worlds.set(world, all);
  if (all.size >= most) all.clear();
  const machines = all.get(sort) ?? new WeakMap();
  all.set(sort, machines);
  return (machine) => {
    const memory = machines.get(machine) ?? emptyMemory();
    machines.set(machine, memory);
    return memory as Memory<T>;
  };
}
