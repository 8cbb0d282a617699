import type { Element } from '@xmldom/xmldom';
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answersOf } from '../../src/answers/answers.ts';
import type { AnswersDocument } from '../../src/answers/schema.ts';
import { catalogueOf } from '../../src/catalogue/catalogue.ts';
import type { CatalogueDocument, MachineDocument } from '../../src/catalogue/schema.ts';
import { lineUp, type LineUp, type MachineCell } from '../../src/drawing/line-up.ts';
import { boundsOf, type Part } from '../../src/drawing/shape.ts';
import { shortlist } from '../../src/reasons/shortlist.ts';
import { ruleBook } from '../../src/trade/book.ts';
import { aMinute, anyAnswers, anyCatalogue, runs } from '../support/arbitraries.ts';
import { across, anyMachines, anySheet, anyThings, book, draw, elements, fullMachine, hasClass, m, parsed, svgOf } from './drawn.ts';

const machineCells = ({ cells }: LineUp) => cells.filter((cell): cell is LineUp['cells'][number] & MachineCell => cell.kind === 'machine');
const partsOf = (lineUp: LineUp, assumed: boolean) => new Set(lineUp.cells.flatMap(({ shapes }) => shapes.filter((shape) => shape.assumed === assumed).map(({ part }) => part)));

test('each machine is drawn as wide as it is, to the scale of all', () => {
  fc.assert(fc.property(anyMachines(1, 8), anyThings, anySheet, (machines, said, sheet) => {
    const drawn = draw(machines, said, { ...sheet, view: 'rear' });
    const document = parsed(svgOf(drawn));
    for (const [at, machine] of machines.entries()) {
      const tyres = elements(document, (element) => hasClass(element, 'tyre') && (element.parentNode as Element).getAttribute('id') === `a-machine-machine-${at}`);
      const [left, right] = [Math.min(...tyres.map((tyre) => across(tyre)[0])), Math.max(...tyres.map((tyre) => across(tyre)[1]))];
      expect(tyres).toHaveLength(2);
      const given = machine.tyres?.[0]?.widthOverRear.value;
      expect(tyres.every((tyre) => hasClass(tyre, 'assumed'))).toBe(given === undefined || tyres.some((tyre) => hasClass(tyre, 'assumed')));
      if (given !== undefined) expect(Math.abs(right - left - given * drawn.scale)).toBeLessThan(0.03);
    }
  }), runs(60));
}, aMinute);

test('all of a row stand on one ground line, and every tyre touches it', () => {
  fc.assert(fc.property(anyMachines(0, 8), anyThings, anySheet, (machines, said, sheet) => {
    const drawn = draw(machines, said, sheet);
    const rows = [...new Set(drawn.cells.map(({ box }) => box.y))].map((y) => drawn.cells.filter(({ box }) => box.y === y));
    for (const row of rows) expect(new Set(row.map(({ origin }) => origin.y)).size).toBe(1);
    for (const { shapes } of machineCells(drawn)) expect(boundsOf(shapes.filter(({ part }) => part === 'tyre')).bottom).toBeCloseTo(0, 9);
  }), runs(100));
});

test('nothing overlaps, all is on the sheet and every number is one', () => {
  fc.assert(fc.property(anyMachines(0, 12), anyThings, anySheet, (machines, said, sheet) => {
    const drawn = draw(machines, said, sheet);
    expect(JSON.stringify(drawn)).not.toMatch(/null|NaN|Infinity/);
    expect(svgOf(drawn)).not.toMatch(/NaN|Infinity|undefined/);
    if (sheet.layout !== 'row') expect(drawn.width).toBe(sheet.width);
    for (const [at, { box, origin, bounds }] of drawn.cells.entries()) {
      expect(box.x).toBeGreaterThanOrEqual(0);
      expect(box.x + box.width).toBeLessThanOrEqual(drawn.width + 1e-6);
      expect(box.y + box.height).toBeLessThanOrEqual(drawn.height);
      expect(origin.x + bounds.left * drawn.scale).toBeGreaterThanOrEqual(box.x);
      expect(origin.x + bounds.right * drawn.scale).toBeLessThanOrEqual(box.x + box.width + 1e-6);
      expect(origin.y - bounds.top * drawn.scale).toBeGreaterThanOrEqual(box.y);
      for (const other of drawn.cells.slice(at + 1).map((cell) => cell.box)) {
        const apart = other.x >= box.x + box.width - 1e-6 || other.x + other.width <= box.x + 1e-6 || other.y >= box.y + box.height || other.y + other.height <= box.y;
        expect(apart).toBe(true);
      }
    }
  }), runs(150));
});

test('of a machine whose figures are all given only the bonnet is assumed, and how far out the raised arms are', () => {
  expect([...partsOf(draw([fullMachine]), true)].sort()).toEqual(['bonnet', 'reach']);
  expect([...partsOf(draw([fullMachine], {}, { view: 'rear' }), true)]).toEqual([]);
});

const without: [string, Partial<MachineDocument>, 'side' | 'rear', Part, Part][] = [
  ['the tyres', { tyres: [] }, 'rear', 'tyre', 'rops'],
  ['the tyres’ size', { tyres: [{ type: 'turf', widthOverRear: m(1.4) }] }, 'side', 'tyre', 'bucket'],
  ['the height', { height: {} }, 'side', 'rops', 'tyre'],
  ['the height, from behind', { height: {} }, 'rear', 'rops', 'tyre'],
  ['the wheelbase', { wheelbase: undefined }, 'side', 'body', 'tyre'],
  ['the length with loader', { lengthWithLoader: undefined }, 'side', 'bucket', 'tyre'],
];
test.each(without)('without %s what rests on it is dashed, and what doesn’t is not', (_what, lacking, view, dashed, still) => {
  const drawn = draw([JSON.parse(JSON.stringify({ ...fullMachine, ...lacking })) as MachineDocument], {}, { view });
  const shapes = drawn.cells.flatMap((cell) => cell.shapes);
  expect(shapes.filter(({ part, line }) => part === dashed && line === 'heavy').every(({ assumed }) => assumed)).toBe(true);
  expect(shapes.filter(({ part }) => part === still).some(({ assumed }) => assumed)).toBe(false);
});

test('dashed in the picture is what is assumed in the geometry, shape by shape', () => {
  fc.assert(fc.property(anyMachines(1, 4), anyThings, anySheet, (machines, said, sheet) => {
    const drawn = draw(machines, said, sheet);
    const shown = elements(parsed(svgOf(drawn)), (element) => ['path', 'circle'].includes(element.tagName) && /\b(heavy|light|thin|no-line)\b/.test(element.getAttribute('class') ?? '')
      && !hasClass(element.parentNode as never, 'legend'));
    expect(shown.map((element) => hasClass(element, 'assumed'))).toEqual(drawn.cells.flatMap(({ shapes }) => shapes.map(({ assumed }) => assumed)));
  }), runs(40));
}, aMinute);

test('a figure nobody gave is told nowhere', () => {
  const [bare] = draw([{ ...fullMachine, tyres: [], height: {}, wheelbase: undefined, length: undefined, lengthWithLoader: undefined, loaders: [] } as unknown as MachineDocument]).items;
  expect(bare).toEqual({ machine: 'full', standing: 'not-judged', over: 'rops', withLoader: false, fits: [] });
  fc.assert(fc.property(anyMachines(1, 4), anySheet, (machines, sheet) => {
    for (const { dimensions, item } of machineCells(draw(machines, {}, sheet))) {
      for (const { of, value } of dimensions) expect(item[of as 'width']).toBe(value);
    }
  }), runs(60));
});

test('what is left of an opening is drawn wider than the machine exactly if it passes', () => {
  const counted = { yes: 0, no: 0, unknown: 0 };
  fc.assert(fc.property(anyMachines(1, 6), anyThings, (machines, said) => {
    for (const { item, shapes } of machineCells(draw(machines, said, { view: 'rear' }))) {
      const passage = item.fits.find(({ id }) => id === 'gate.width');
      if (!passage) continue;
      counted[passage.outcome] += 1;
      const within = boundsOf(shapes.filter(({ part }) => part === 'room')).right;
      const machine = boundsOf(shapes.filter(({ part }) => part === 'tyre' || part === 'deck')).right;
      // Door and gate may both stand round it: the narrower of the two decides what is asked here.
      if (item.fits.some(({ id }) => id === 'door.width')) continue;
      if (passage.outcome !== 'unknown') expect(machine <= within + 1e-9).toBe(passage.outcome === 'yes');
    }
  }), runs(200));
  expect(Math.min(...Object.values(counted))).toBeGreaterThan(10);
});

test('78 in, 6.5 ft and 1.9812 m make one passage', () => {
  const fits = [{ value: 78, unit: 'in' as const }, { value: 6.5, unit: 'ft' as const }, m(1.9812)].map((gate) =>
    draw([{ ...fullMachine, tyres: [{ type: 'turf', widthOverRear: { value: 66, unit: 'in' } }] }], { land: { gate } }, { view: 'rear' }).items[0]!.fits[0]!.outcome);
  expect(fits).toEqual(['yes', 'yes', 'yes']);
});

test('forty machines, and none at all', () => {
  const forty = Array.from({ length: 40 }, (_, at) => ({ ...fullMachine, id: `m-${at}` }));
  for (const layout of ['row', 'wrap', 'alone'] as const) {
    const drawn = draw(forty, {}, { layout, width: 320 });
    expect(elements(parsed(svgOf(drawn)), (element) => hasClass(element, 'machine'))).toHaveLength(40);
    const empty = draw(forty, {}, { layout, width: 320, machines: [] });
    expect([empty.items, empty.cells]).toEqual([[], []]);
    expect(parsed(svgOf(empty)).documentElement!.getAttribute('height')).toMatch(/^\d+$/);
  }
});

test('only the things the buyer spoke of are drawn, and of a load what is said', () => {
  const things = (said: Omit<AnswersDocument, 'format'>, view: 'side' | 'rear' = 'side') =>
    draw([fullMachine], said, { view }).cells.flatMap((cell) => (cell.kind === 'thing' ? [cell.id] : []));
  expect(things({})).toEqual([]);
  expect(things({ storage: { kind: 'outdoors', doorWidth: m(3) }, haul: { how: 'never', trailer: { deckLength: m(4) } } })).toEqual([]);
  expect(things({ land: { gate: m(2) }, storage: { doorHeight: m(2) }, tasks: [{ task: 'lift-bales' }] })).toEqual(['door', 'gate', 'bale']);
  expect(things({ land: { gate: m(2) }, tasks: [{ task: 'lift-pallets' }] }, 'rear')).toEqual(['gate']);

  const bale = (task: object) => {
    const shape = draw([], { tasks: [{ task: 'lift-bales', ...task }] }, { machines: [] }).cells[0]!.shapes[0]!;
    return shape.form === 'circle' ? { across: shape.radius * 2, assumed: shape.assumed } : undefined;
  };
  expect(bale({ diameter: m(1.5) })).toEqual({ across: 1.5, assumed: false });
  // 1,100 lb of dry hay is a bale of 5 by 5 ft (Texas A&M AgriLife Extension E-319).
  const weighed = bale({ weight: { value: 1100, unit: 'lb' } })!;
  expect(weighed).toEqual({ across: expect.closeTo(5 * 0.3048, 2), assumed: true });
  expect(bale({})!.assumed).toBe(true);
});

const read = (path: string) => JSON.parse(readFileSync(new URL(`../../demo/${path}`, import.meta.url), 'utf8')) as never;
const demo = read('catalogue.json') as CatalogueDocument;
const drawnWith = (document: AnswersDocument, view: 'side' | 'rear') => {
  const judged = shortlist(demo, document);
  return { judged, drawn: lineUp({ catalogue: catalogueOf(demo), answers: answersOf(document), book, shortlist: judged, view, layout: 'wrap', width: 1000, units: 'us' }) };
};

test.each(['first-acre', 'hay-and-barn', 'steep-and-careful'])('for the buyer of %s each machine stands as the shortlist says', (buyer) => {
  const { judged, drawn } = drawnWith(read(`answers/${buyer}.json`), 'side');
  const of = (standing: string) => drawn.items.filter((item) => item.standing === standing).map(({ machine }) => machine).sort();
  expect(of('stands')).toEqual(judged.shortlist.map(({ machine }) => machine).sort());
  expect(of('ask')).toEqual(judged.askDealer.map(({ machine }) => machine).sort());
  expect(of('ruled-out')).toEqual(judged.ruledOut.map(({ machine }) => machine).sort());
});

test('where only one thing of the buyer’s rules out, the picture says the same of it as the ranking', () => {
  const gates = { slope: 'flat', overhead: 'open' } as const;
  const buyers: [string, Omit<AnswersDocument, 'format'>][] = [
    ['gate.width', { land: { ...gates, gate: { value: 67, unit: 'in' } } }],
    ['door.width', { land: gates, storage: { kind: 'shed', doorWidth: { value: 70, unit: 'in' } } }],
    ['door.height', { land: gates, storage: { kind: 'shed', doorHeight: { value: 80, unit: 'in' } } }],
    ['trailer.length', { land: gates, haul: { how: 'own-trailer', trailer: { deckLength: { value: 12, unit: 'ft' } } } }],
    ['bale.height', { land: gates, tasks: [{ task: 'lift-bales', must: true, height: { value: 90, unit: 'in' } }] }],
  ];
  for (const [id, said] of buyers) {
    const { judged, drawn } = drawnWith({ format: 'acre-to-axle/answers/1', ...said }, 'rear');
    const failing = judged.ruledOut.filter(({ because }) => because.length > 0).map(({ machine }) => machine).sort();
    expect(failing.length).toBeGreaterThan(0);
    expect(failing.length).toBeLessThan(demo.machines.length);
    const shown = drawn.items.filter(({ fits }) => fits.some((fit) => fit.id === id && fit.outcome === 'no')).map(({ machine }) => machine).sort();
    expect(shown, id).toEqual(failing);
  }
}, aMinute);

test('what stands by the ranking passes in the picture, whatever the buyer says and whichever figures are missing', () => {
  let passed = 0;
  fc.assert(fc.property(anyCatalogue, anyAnswers, (document, said) => {
    const judged = shortlist(document, said);
    const drawn = lineUp({ catalogue: catalogueOf(document), answers: answersOf(said), book: ruleBook(document.rules), shortlist: judged, view: 'rear', layout: 'wrap', width: 1000, units: 'us' });
    const passages = drawn.items.filter(({ standing }) => standing === 'stands')
      .flatMap(({ fits }) => fits.filter(({ id }) => id === 'door.height' || !id.endsWith('.height')));
    passed += passages.length;
    expect(passages.filter(({ outcome }) => outcome !== 'yes')).toEqual([]);
  }), runs(60));
  expect(passed).toBeGreaterThan(50);
}, aMinute);
