import type { Capability } from '../../needs/need.ts';
import { commonPractice, fromMemory, seenSecondHand, type Source } from '../../trade/record.ts';
import type { FigureId } from '../../trade/book.ts';
import { atLeast } from '../../units/compare.ts';
import { ageOf, drivesOf, hoursAYear, mayHave, openByYear, type Look } from './look.ts';

/** When in a visit it is done: before it, with the engine off, with the engine running. */
export const kinds = ['papers', 'standing', 'running'] as const;
export type ItemKind = (typeof kinds)[number];

/** Why something is on the list: what is known of this unit, or isn't. */
export const whyIds = [
  'rops.missing', 'rops.altered', 'rops.uncertified', 'rops.unknown', 'rops.see',
  'belt.missing', 'belt.unknown', 'belt.see', 'recall.open', 'recall.unknown',
  'exhaust.defeated', 'exhaust.unknown', 'exhaust.see', 'shield.missing', 'shield.unknown', 'shield.see',
  'interlock.always', 'brakes.always', 'brakes.slope', 'cab.no-rops', 'backhoe.subframe',
  'plate.edge', 'plate.no-year', 'plate.see', 'lien.open', 'lien.unknown', 'imported.yes', 'imported.unknown',
  'use.known', 'use.unknown', 'record.see', 'record.none', 'record.unknown', 'meter.unverified', 'meter.unknown',
  'hours.many', 'hours.few', 'hours.plain', 'hours.unknown', 'leaks.always', 'pins.work', 'pins.fitted', 'axle.loader',
  'magnet.iron', 'magnet.aluminium', 'magnet.unknown', 'liquid.yes', 'liquid.unknown', 'tyres.worn', 'tyres.unknown',
  'deck.fitted', 'start.cold', 'clutch.kind', 'hydrostatic.kind', 'pto.needs', 'pto.has', 'hitch.needs', 'hitch.has', 'filter.has',
] as const;
export type WhyId = (typeof whyIds)[number];

export interface Why {
  id: WhyId;
  figures?: Readonly<Record<string, { value: number; unit: string }>>;
  /** What the dealer wrote of it. */
  told?: string;
  /** Parts that hang on its year. */
  parts?: readonly string[];
  rules?: readonly FigureId[];
  /** It is ruled out until that is mended. */
  ruledOut?: true;
}

export interface ItemRow {
  kind: ItemKind;
  /** Someone may be hurt by it. */
  safety: boolean;
  source: Source;
  /** Demands it is looked at for, by the start of their capabilities. */
  serves?: readonly (Capability | `${string}.`)[];
  /** Undefined where it doesn't apply to this unit. */
  why(look: Look): Why | undefined;
}

const rops = seenSecondHand('29 CFR 1928.51 (United States), as the North Carolina Department of Labor restates it', '(b) to (d): ROPS, seat belt, label');
const shields = fromMemory('29 CFR 1928.57 (United States), guarding of farm field equipment', '(b): PTO guarding');
const emissions = fromMemory('42 U.S.C. 7522 (United States), prohibited acts', '(a)(3): removing what an engine was certified with');

const row = (kind: ItemKind, why: ItemRow['why'], more: Partial<ItemRow> = {}): ItemRow => ({ kind, safety: false, source: commonPractice, why, ...more });
const safety = { safety: true } as const;
const has = ({ needs }: Look, ...starts: string[]) => needs.some(({ capability }) => starts.some((start) => capability.startsWith(start)));
/** By what is said: yes, no, or nobody said. */
const said = <T>(value: boolean | undefined, yes: T, no: T, unsaid: T): T => (value === undefined ? unsaid : value ? yes : no);
const plain = (id: WhyId): Why => ({ id });
const out = (id: WhyId): Why => ({ id, ruledOut: true });

const pto = ['mower', 'rotary-cutter', 'implement', 'pto.power'] as const;
const lifts = ['loader.'] as const;

function whyHours(look: Look): Why {
  const { unit: { hours }, book } = look;
  const [age, perYear] = [ageOf(look), hoursAYear(look)];
  if (hours === undefined || age === undefined || perYear === undefined) return plain('hours.unknown');
  const figures = { hours: { value: hours, unit: 'hours' }, age: { value: age, unit: 'years' }, perYear: { value: perYear, unit: 'per-year' } };
  if (perYear > book.value('lot.inspect.hours-most')) return { id: 'hours.many', figures, rules: ['lot.inspect.hours-most'] };
  return perYear < book.value('lot.inspect.hours-least') ? { id: 'hours.few', figures, rules: ['lot.inspect.hours-least'] } : { id: 'hours.plain', figures };
}

function whyPlate(look: Look): Why {
  const { unit: { year }, machine: { years: { from, to } } } = look;
  if (year === undefined) return plain('plate.no-year');
  const parts = openByYear(look);
  const figures = { year: { value: year, unit: 'year' }, from: { value: from, unit: 'year' }, ...(to !== undefined && { to: { value: to, unit: 'year' } }) };
  return parts.length > 0 ? { id: 'plate.edge', figures, parts } : { id: 'plate.see', figures };
}

function whyTyres({ unit: { tyres }, book }: Look): Why | undefined {
  if (tyres?.wear === undefined) return plain('tyres.unknown');
  return atLeast(tyres.wear, book.value('lot.inspect.tyre-wear'))
    ? { id: 'tyres.worn', figures: { wear: { value: tyres.wear, unit: 'ratio' } }, rules: ['lot.inspect.tyre-wear'] } : undefined;
}

function whyLiquid({ unit: { tyres }, machine }: Look): Why | undefined {
  const mass = machine.tyres?.find(({ type, fillMass }) => fillMass !== undefined && (tyres?.type === undefined || type === tyres.type))?.fillMass;
  const figures = mass === undefined ? {} : { figures: { mass: { value: mass, unit: 'kg' } } };
  return said<Why | undefined>(tyres?.liquid, { id: 'liquid.yes', ...figures }, undefined, { id: 'liquid.unknown', ...figures });
}

function whyRops({ unit: { rops: own } }: Look): Why {
  if (own?.kind === 'none') return out('rops.missing');
  if (own?.altered === true) return out('rops.altered');
  if (own?.certified === false) return out('rops.uncertified');
  return plain(own === undefined || own.kind === 'unknown' || own.certified === undefined ? 'rops.unknown' : 'rops.see');
}

/** Everything there may be to look at, the gravest first; what applies is taken in this order. */
export const items = {
  rops: row('standing', whyRops, { ...safety, source: rops, serves: ['rops'] }),
  'seat-belt': row('standing', ({ unit: { seatBelt } }) => said(seatBelt, plain('belt.see'), out('belt.missing'), plain('belt.unknown')), { ...safety, source: rops, serves: ['seat-belt'] }),
  recall: row('papers', ({ unit: { recallOpen } }) => said<Why | undefined>(recallOpen, out('recall.open'), undefined, plain('recall.unknown')), { ...safety, serves: ['recall'] }),
  exhaust: row('standing', ({ unit: { exhaustIntact }, machine: { exhaust } }) => (exhaust === 'none' && exhaustIntact !== false ? undefined
    : said(exhaustIntact, plain('exhaust.see'), out('exhaust.defeated'), plain('exhaust.unknown'))), { source: emissions, serves: ['exhaust.intact'] }),
  'pto-shield': row('standing', ({ unit: { ptoShield }, machine: { rearPto, midPto } }) => (rearPto || midPto
    ? said(ptoShield, plain('shield.see'), plain('shield.missing'), plain('shield.unknown')) : undefined), { ...safety, source: shields, serves: pto }),
  'start-interlock': row('running', () => plain('interlock.always'), safety),
  brakes: row('running', (look) => plain(has(look, 'slope', 'tow') ? 'brakes.slope' : 'brakes.always'), { ...safety, serves: ['slope.', 'tow.'] }),
  cab: row('standing', (look) => (mayHave(look, 'cab') && look.unit.rops?.kind !== 'cab' ? plain('cab.no-rops') : undefined), { ...safety, serves: ['cab'] }),
  backhoe: row('standing', (look) => (mayHave(look, 'backhoe') ? plain('backhoe.subframe') : undefined), { ...safety, serves: ['backhoe'] }),
  'serial-plate': row('papers', whyPlate),
  lien: row('papers', ({ unit: { lienOpen } }) => said<Why | undefined>(lienOpen, plain('lien.open'), undefined, plain('lien.unknown'))),
  imported: row('papers', ({ unit: { imported } }) => said<Why | undefined>(imported, plain('imported.yes'), undefined, plain('imported.unknown'))),
  'service-record': row('papers', ({ unit: { serviceRecord } }) => plain(said(serviceRecord, 'record.see', 'record.none', 'record.unknown'))),
  'previous-use': row('papers', ({ unit: { previousUse } }) => (previousUse === undefined ? plain('use.unknown') : { id: 'use.known', told: previousUse })),
  'hour-meter': row('standing', ({ unit: { meterVerified } }) => said<Why | undefined>(meterVerified, undefined, plain('meter.unverified'), plain('meter.unknown'))),
  'hours-and-wear': row('standing', whyHours),
  'hydraulic-leaks': row('standing', () => plain('leaks.always'), { ...safety, serves: ['loader.', 'hitch.', 'backhoe'] }),
  'loader-pins': row('standing', (look) => (mayHave(look, 'loader') ? plain(has(look, ...lifts) ? 'pins.work' : 'pins.fitted') : undefined), { serves: lifts }),
  'front-axle': row('standing', (look) => (mayHave(look, 'loader') ? plain('axle.loader') : undefined), { serves: lifts }),
  'axle-housing': row('standing', ({ machine: { axleHousing } }) => plain(axleHousing === undefined ? 'magnet.unknown' : axleHousing === 'aluminium' ? 'magnet.aluminium' : 'magnet.iron'), { serves: lifts }),
  'tyre-ballast': row('standing', whyLiquid, { serves: ['loader.rear-axle', 'trailer.'] }),
  tyres: row('standing', whyTyres, { serves: ['tyres', 'ground-pressure'] }),
  deck: row('standing', (look) => (mayHave(look, 'deck') ? plain('deck.fitted') : undefined), { ...safety, serves: ['mower'] }),
  'cold-start': row('running', () => plain('start.cold')),
  clutch: row('running', (look) => (drivesOf(look).some((kind) => kind !== 'hydrostatic') ? plain('clutch.kind') : undefined), { serves: ['transmission'] }),
  hydrostatic: row('running', (look) => (drivesOf(look).includes('hydrostatic') ? plain('hydrostatic.kind') : undefined), { serves: ['transmission'] }),
  'pto-engagement': row('running', (look) => (look.machine.rearPto || look.machine.midPto ? plain(has(look, ...pto) ? 'pto.needs' : 'pto.has') : undefined), { ...safety, serves: pto }),
  hitch: row('running', (look) => (look.machine.hitch ? plain(has(look, 'hitch.', 'implement') ? 'hitch.needs' : 'hitch.has') : undefined), { serves: ['hitch.', 'implement'] }),
  'particulate-filter': row('running', ({ machine: { exhaust } }) => (exhaust === 'particulate-filter' || exhaust === 'filter-and-fluid' ? plain('filter.has') : undefined)),
} as const satisfies Record<string, ItemRow>;

export type ItemId = keyof typeof items;
export const itemIds = Object.keys(items) as ItemId[];
