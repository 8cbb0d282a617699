import { placeOf, shown, type Fault, type Path } from '../documents/fault.ts';
import { nearest } from '../documents/nearest.ts';
import { refusalOf, ruleBook, ruleIds } from '../trade/book.ts';
import { atLeast, atMost } from '../units/compare.ts';
import { toSi } from '../units/quantity.ts';
import type { CatalogueDocument, MachineDocument } from './schema.ts';

type Note = (place: string, read: unknown, expected: string, near?: string) => void;

/** A reference to an id that isn't there names the nearest one that is. */
const resolve = (note: Note, place: string, written: string | undefined, known: readonly string[], what: string) => {
  if (written === undefined || known.includes(written)) return;
  note(place, written, `the id of ${what}`, nearest(written, known));
};

const unique = (note: Note, list: string, ids: readonly string[]) => {
  const seen = new Set<string>();
  ids.forEach((id, index) => {
    if (seen.has(id)) note(`${list}[${index}].id`, id, `an id no other of ${list} has`);
    seen.add(id);
  });
};

const same = (a: number | undefined, b: number | undefined) =>
  a === undefined || b === undefined ? a === b : atLeast(a, b) && atMost(a, b);

function checkLoaders(note: Note, place: string, machine: MachineDocument) {
  machine.loaders?.forEach(({ ratings }, index) => {
    const at = `${place}.loaders[${index}].ratings`;
    if (ratings.length > 2) note(at, `${ratings.length} ratings`, 'one or two ratings of one height');
    const [near, far] = [...ratings].sort((a, b) => toSi(a.ahead) - toSi(b.ahead));
    if (!near || !far) return;
    const height = (rating: typeof near) => rating.height && toSi(rating.height);
    if (!same(height(near), height(far))) note(at, 'two heights', 'both ratings at one height');
    if (near.bucketOn !== far.bucketOn) note(at, 'one with, one without the bucket', 'both ratings with or both without the bucket');
    if (same(toSi(near.ahead), toSi(far.ahead))) note(at, 'two ratings at one distance', 'ratings at two distances');
    else if (atLeast(toSi(far.load), toSi(near.load))) {
      note(`${at}[${ratings.indexOf(far)}].load`, far.load, 'less than the rating nearer the pins');
    }
  });
}

function checkMachine(note: Note, place: string, machine: MachineDocument) {
  const { years, height, engine } = machine;
  if (years.to !== undefined && years.to < years.from) note(`${place}.years.to`, years.to, `${years.from} or later`);
  if (height?.ropsFolded && height.ropsUp && !atMost(toSi(height.ropsFolded), toSi(height.ropsUp))) {
    note(`${place}.height.ropsFolded`, height.ropsFolded, 'no more than with the ROPS standing');
  }
  if (engine?.ptoPower && engine.power && !atMost(toSi(engine.ptoPower), toSi(engine.power))) {
    note(`${place}.engine.ptoPower`, engine.ptoPower, 'no more than the power of the engine');
  }
  checkLoaders(note, place, machine);
}

/** Prices are added up, so all money of a catalogue is in the dealer's currency. */
function checkCurrencies(note: Note, path: Path, value: unknown, currency: string) {
  if (typeof value !== 'object' || value === null) return;
  const money = value as { value?: unknown; currency?: unknown };
  if (typeof money.value === 'number' && typeof money.currency === 'string' && money.currency !== currency) {
    note(placeOf([...path, 'currency']), money.currency, `the dealer's currency, ${currency}`);
  }
  const inner = Array.isArray(value) ? [...value.entries()] : Object.entries(value);
  for (const [key, each] of inner) checkCurrencies(note, [...path, key], each, currency);
}

/** Rows of one line are generations: their years overlap by no more than the one in which the later followed. */
function checkGenerations(note: Note, machines: readonly MachineDocument[]) {
  machines.forEach((later, index) => {
    const clash = machines.slice(0, index).find((earlier) => {
      const [first, last] = [Math.max(later.years.from, earlier.years.from), Math.min(later.years.to ?? Infinity, earlier.years.to ?? Infinity)];
      const followed = first === last && Math.min(later.years.from, earlier.years.from) < first;
      return later.line !== undefined && earlier.line === later.line && first <= last && !followed;
    });
    if (clash) note(`machines[${index}].years`, later.years, `years that share no more than the year of the change with those of ${clash.id}, of the same line`);
  });
}

/** Whether numbers and days can be written the way of a locale: an engine throws on a tag it can't read. */
const isLocale = (written: string) => {
  try {
    return Intl.getCanonicalLocales(written).length > 0;
  } catch {
    return false;
  }
};

const book = ruleBook();

/**
 * Power and year only query what is said of the exhaust: engines of that size and time mostly have a
 * filter, and one said to have none may have lost it.
 */
export function queriesExhaust({ engine, exhaust, years }: MachineDocument): boolean {
  if (!engine?.power || engine.fuel !== 'diesel' || (exhaust !== 'none' && exhaust !== 'catalyst')) return false;
  const power = toSi(engine.power);
  return years.from >= book.value('exhaust.filter.year')
    && atLeast(power, book.value('exhaust.filter.power-least')) && atMost(power, book.value('exhaust.filter.power-most'));
}

/** What a schema cannot say about a catalogue: references, figures that contradict each other, refused rules. */
export function checkCatalogue(document: CatalogueDocument): { faults: Fault[]; warnings: string[] } {
  const faults: Fault[] = [];
  const note: Note = (place, read, expected, near) =>
    faults.push({ place, read: shown(read), expected, ...(near && { nearest: near }) });
  const { machines, frames, implements: tools = [], units = [], dealer, rules = {} } = document;

  const ids = (list: readonly { id: string }[]) => list.map(({ id }) => id);
  unique(note, 'frames', ids(frames));
  unique(note, 'machines', ids(machines));
  unique(note, 'implements', ids(tools));
  unique(note, 'units', ids(units));

  machines.forEach((machine, index) => {
    const place = `machines[${index}]`;
    resolve(note, `${place}.frame`, machine.frame, ids(frames), 'a frame in this catalogue');
    checkMachine(note, place, machine);
  });
  checkGenerations(note, machines);

  checkCurrencies(note, [], document, dealer.currency);

  units.forEach((unit, index) => {
    const place = `units[${index}]`;
    const machine = machines.find(({ id }) => id === unit.machine);
    resolve(note, `${place}.machine`, unit.machine, ids(machines), 'a machine in this catalogue');
    if (machine) {
      resolve(note, `${place}.loader`, unit.loader, ids(machine.loaders ?? []), 'a loader of its machine');
      resolve(note, `${place}.deck`, unit.deck, ids(machine.decks ?? []), 'a deck of its machine');
      resolve(note, `${place}.cab`, unit.cab, ids(machine.cabs ?? []), 'a cab of its machine');
    }
    unit.attachments?.forEach((tool, at) => resolve(note, `${place}.attachments[${at}]`, tool, ids(tools), 'an implement in this catalogue'));
    if (unit.price?.value === 0) note(`${place}.price`, unit.price, 'a price; leave it out where it is not known');
    const { from, to } = machine?.years ?? { from: 0 };
    if (machine && unit.year !== undefined && (unit.year < from - 1 || unit.year > (to ?? Infinity) + 2)) {
      note(`${place}.year`, unit.year, `a year of ${machine.id}, ${from} to ${to ?? 'today'}`);
    }
  });

  for (const [id, override] of Object.entries(rules)) {
    const refusal = refusalOf(id, override);
    if (refusal) note(`rules.${id}`, override, refusal, (ruleIds as string[]).includes(id) ? undefined : nearest(id, ruleIds));
  }

  if (!isLocale(dealer.locale)) note('dealer.locale', dealer.locale, 'a language and region such as en-US');
  const language = dealer.locale.split('-')[0]!;
  const warnings = [
    ...(dealer.terms?.[language] ? [] : [`dealer.terms.${language} is missing: results in that language carry the default terms`]),
    ...machines.flatMap((machine, index) => (queriesExhaust(machine)
      ? [`machines[${index}].exhaust of ${machine.id} is said to be “${machine.exhaust}”: most diesel engines of that power and year have a filter, so look again`]
      : [])),
  ];
  return { faults, warnings };
}
