import type { Build } from './build.ts';

/** One step into a build, or the question which things are there. The same step is the same object. */
class Path {
  readonly keys: readonly string[];
  /** Looked into and not taken whole: everything else is one thing, the same or another. */
  readonly looked: boolean;
  readonly #looks: Looks;
  readonly #steps = new Map<string, Path>();

  constructor(keys: readonly string[], looked: boolean, looks: Looks) {
    this.keys = keys;
    this.looked = looked;
    this.#looks = looks;
  }

  to(key: string): Path {
    const known = this.#steps.get(key);
    if (known) return known;
    const looks = this.#looks[key];
    const path = new Path([...this.keys, key], looks !== undefined, looks ?? {});
    this.#steps.set(key, path);
    return path;
  }
}

interface Looks { readonly [key: string]: Looks }

const root = new Path([], true, { unit: { fitted: {}, tyres: {}, rops: {} }, tools: {}, ballast: {} });

/** The step that asks which things there are. */
const whichKeys = '*';
const present = Symbol('present');

type Thing = Readonly<Record<string, unknown>>;
const isThing = (value: unknown): value is Thing => typeof value === 'object' && value !== null;

/** What stands for a value where two are compared: lists by what is in them, what is looked into by being there. */
function markAt(build: object, { keys, looked }: Path): unknown {
  let value: unknown = build;
  for (const key of keys) {
    if (!isThing(value)) return undefined;
    value = key === whichKeys ? Object.keys(value) : value[key];
  }
  return Array.isArray(value) ? value.join('\n') : looked && isThing(value) ? present : value;
}

/** A build that notes what is read of it. Its machine is left out: each machine has a memory of its own. */
class Reader implements ProxyHandler<object> {
  readonly #of: Thing;
  readonly #path: Path;
  readonly #reads: Set<Path>;
  #within: Map<string, object> | undefined;

  constructor(of: Thing, path: Path, reads: Set<Path>) {
    this.#of = of;
    this.#path = path;
    this.#reads = reads;
  }

  get(_target: object, key: string | symbol): unknown {
    if (typeof key !== 'string' || (this.#path === root && key === 'machine')) return Reflect.get(this.#of, key);
    const path = this.#path.to(key);
    this.#reads.add(path);
    const value = this.#of[key];
    return path.looked && isThing(value) ? this.#reading(key, value, path) : value;
  }

  #reading(key: string, value: Thing, path: Path): object {
    this.#within ??= new Map();
    const within = this.#within.get(key) ?? reading(value, path, this.#reads);
    this.#within.set(key, within);
    return within;
  }

  has(_target: object, key: string | symbol): boolean {
    this.#reads.add(this.#path.to(whichKeys));
    return Reflect.has(this.#of, key);
  }

  ownKeys(): (string | symbol)[] {
    this.#reads.add(this.#path.to(whichKeys));
    return Reflect.ownKeys(this.#of);
  }

  getOwnPropertyDescriptor(_target: object, key: string | symbol): PropertyDescriptor | undefined {
    return Reflect.has(this.#of, key) ? { enumerable: true, configurable: true, value: undefined } : undefined;
  }
}

const reading = <T extends object>(of: T, path: Path, reads: Set<Path>): T => new Proxy({}, new Reader(of as Thing, path, reads)) as T;

/** How many results are remembered in all, so that whoever keeps several memories can tell when to start afresh. */
export interface Ledger {
  kept: number;
}

/**
 * What was reckoned of builds, by what was read of them on the way: whatever another build agrees in, as far
 * as it was read, gives the same result. What wasn't read can't have mattered, so that no list of what
 * matters has to be kept in step with the judges.
 */
export interface Memory<T> {
  ledger: Ledger;
  /** What is read next; undefined at the end of the way, where the result is. */
  path: Path | undefined;
  next: Map<unknown, Memory<T>> | undefined;
  found: { result: T } | undefined;
}

export const emptyMemory = <T>(ledger: Ledger): Memory<T> => ({ ledger, path: undefined, next: undefined, found: undefined });

function keep<T>(memory: Memory<T>, build: object, reads: Iterable<Path>, result: T) {
  let at = memory;
  for (const path of reads) {
    // A way that is read otherwise than before has no place here; it is reckoned each time.
    if (at.found || (at.path && at.path !== path)) return;
    at.path = path;
    at.next ??= new Map();
    const mark = markAt(build, path);
    const next = at.next.get(mark) ?? emptyMemory<T>(at.ledger);
    at.next.set(mark, next);
    at = next;
  }
  if (at.path || at.found) return;
  at.found = { result };
  at.ledger.kept += 1;
}

/**
 * The result of a reckoning on a build, from memory where one of the same machine that reads the same was
 * reckoned before. The result must hold nothing of the build it was reckoned on but its parts.
 */
export function remembered<B extends Pick<Build, 'machine'>, T>(memory: Memory<T>, build: B, reckon: (build: B) => T): T {
  let at: Memory<T> | undefined = memory;
  while (at?.path) at = at.next!.get(markAt(build, at.path));
  if (at?.found) return at.found.result;
  const reads = new Set<Path>();
  const result = reckon(reading(build, root, reads));
  keep(memory, build, reads, result);
  return result;
}
