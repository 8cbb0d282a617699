import { shown, type Fault } from '../documents/fault.ts';
import { nearest } from '../documents/nearest.ts';
import { refusalOf, ruleIds } from '../trade/book.ts';
import { toSi } from '../units/quantity.ts';
import type { CatalogueDocument, MachineDocument } from './schema.ts';

type Note = (place: string, read: unknown, expected: string, near?: string) => void;

/** A reference to an id that isn't there names the nearest one that is. */
const resolve = (note: Note, place: string, written: string | undefined, known: readonly string[], what: string) => {
  if (written === undefined || known.includes(written)) return;
  note(place, written, `the id of ${what}`, nearest(written, known));
};

const unique = (note: Note, list: string, ids: readonly string[]) => {
  ids.forEach((id, index) => {
    if (ids.indexOf(id) < index) note(`${list}[${index}].id`, id, `an id no other of ${list} has`);
  });
};

function checkLoaders(note: Note, place: string, machine: MachineDocument) {
  machine.loaders?.forEach((loader, index) => {
    const at = `${place}.loaders[${index}].ratings`;
    const [first, second] = [...loader.ratings].sort((a, b) => toSi(a.ahead) - toSi(b.ahead));
    if (loader.ratings.length > 2) note(at, `${loader.ratings.length} ratings`, 'one or two ratings of one height');
    if (!first || !second) return;
    const height = (rating: typeof first) => rating.height && toSi(rating.height);
    if (height(first) !== height(second)) note(at, 'two heights', 'both ratings at one height');
    if (first.bucketOn !== second.bucketOn) note(at, 'one with, one without the bucket', 'both ratings with or both without the bucket');
    if (!(toSi(second.load) < toSi(first.load))) {
      note(`${at}[1].load`, second.load, 'less than the rating nearer the pins');
    }
  });
}

function checkMachine(note: Note, place: string, machine: MachineDocument, currency: string) {
  const { years, height, engine, listPrice, typicalPrices = [] } = machine;
  if (years.to !== undefined && years.to < years.from) note(`${place}.years.to`, years.to, `${years.from} or later`);
  if (height?.ropsFolded && height.ropsUp && toSi(height.ropsFolded) > toSi(height.ropsUp)) {
    note(`${place}.height.ropsFolded`, height.ropsFolded, 'no more than with the ROPS standing');
  }
  if (engine?.ptoPower && engine.power && toSi(engine.ptoPower) > toSi(engine.power)) {
    note(`${place}.engine.ptoPower`, engine.ptoPower, 'no more than the power of the engine');
  }
  const prices = [
    ...typicalPrices.map(({ price }, index) => [`typicalPrices[${index}].price`, price] as const),
    ...(listPrice ? [['listPrice.price', listPrice.price] as const] : []),
  ];
  for (const [at, price] of prices) {
    if (price.currency !== currency) note(`${place}.${at}.currency`, price.currency, `the dealer's currency, ${currency}`);
  }
  checkLoaders(note, place, machine);
}

/** Rows of one line are generations: their years don't overlap. */
function checkGenerations(note: Note, machines: readonly MachineDocument[]) {
  machines.forEach((later, index) => {
    const clash = machines.slice(0, index).find(
      (earlier) => later.line !== undefined && earlier.line === later.line
        && later.years.from <= (earlier.years.to ?? Infinity) && earlier.years.from <= (later.years.to ?? Infinity),
    );
    if (clash) note(`machines[${index}].years`, later.years, `years that don't overlap those of ${clash.id}, of the same line`);
  });
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
    checkMachine(note, place, machine, dealer.currency);
  });
  checkGenerations(note, machines);

  tools.forEach(({ price }, index) => {
    if (price && price.currency !== dealer.currency) note(`implements[${index}].price.currency`, price.currency, `the dealer's currency, ${dealer.currency}`);
  });

  units.forEach((unit, index) => {
    const place = `units[${index}]`;
    const machine = machines.find(({ id }) => id === unit.machine);
    resolve(note, `${place}.machine`, unit.machine, ids(machines), 'a machine in this catalogue');
    resolve(note, `${place}.loader`, unit.loader, ids(machine?.loaders ?? []), 'a loader of its machine');
    resolve(note, `${place}.deck`, unit.deck, ids(machine?.decks ?? []), 'a deck of its machine');
    resolve(note, `${place}.cab`, unit.cab, ids(machine?.cabs ?? []), 'a cab of its machine');
    unit.attachments?.forEach((tool, at) => resolve(note, `${place}.attachments[${at}]`, tool, ids(tools), 'an implement in this catalogue'));
    if (unit.price && unit.price.currency !== dealer.currency) note(`${place}.price.currency`, unit.price.currency, `the dealer's currency, ${dealer.currency}`);
    const { from, to } = machine?.years ?? { from: 0 };
    if (machine && unit.year !== undefined && (unit.year < from - 1 || unit.year > (to ?? Infinity) + 2)) {
      note(`${place}.year`, unit.year, `a year of ${machine.id}, ${from} to ${to ?? 'today'}`);
    }
  });

  for (const [id, override] of Object.entries(rules)) {
    const refusal = refusalOf(id, override);
    if (refusal) note(`rules.${id}`, override, refusal, (ruleIds as string[]).includes(id) ? undefined : nearest(id, ruleIds));
  }

  const language = dealer.locale.split('-')[0]!;
  const warnings = dealer.terms?.[language]
    ? []
    : [`dealer.terms.${language} is missing: results in that language carry the default terms`];
  return { faults, warnings };
}
