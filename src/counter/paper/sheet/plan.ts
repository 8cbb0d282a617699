import { saidElsewhere, unitText } from '../../../handoff/letter/machine.ts';
import { decisiveNeeds, decisiveSums, isShownToBuyers } from '../../../reasons/decisive.ts';
import { reasonMarks } from '../../../reasons/reason-marks.ts';
import { sayReason, sayWorking, type SaidWorking, type Voice } from '../../../reasons/say.ts';
import type { Entry, Reason, WorkingEntry } from '../../../reasons/schema.ts';
import type { Extent } from './extent.ts';
import type { SheetView } from './view.ts';

export interface Point {
  mark: string;
  text: string;
}

/** What is told of one machine, and how much more there is of each. */
export interface MachinePlan {
  entry: Entry;
  /** Whether the dealer has to be asked about it. */
  asks: boolean;
  reasons: readonly Point[];
  drawbacks: readonly Point[];
  sums: readonly (SaidWorking & { of: string })[];
  units: readonly string[];
  more: Readonly<Record<'reasons' | 'drawbacks' | 'sums' | 'units', number>>;
}

export interface Plan {
  machines: readonly MachinePlan[];
  /** Machines that stand, or are to be asked about, and are only named. */
  named: readonly Entry[];
}

/** True of every machine, so it is told of one only where it is all there is against it. */
export const unseen: Reason = { id: 'condition.unseen', kind: 'unknown', weight: 0, figures: {} };

function pointsOf({ reasons }: Entry, kinds: readonly Reason['kind'][], voice: Voice): Point[] {
  const told = kinds.flatMap((kind) => reasons.filter((reason) => reason.kind === kind && !saidElsewhere(reason)));
  const said = new Map(told.map((reason) => [sayReason(reason, voice), reasonMarks[reason.kind]]));
  return [...said].map(([text, mark]) => ({ text, mark }));
}

function drawbacksOf(entry: Entry, asks: boolean, voice: Voice): Point[] {
  const points = pointsOf(entry, asks ? ['unknown', 'against', 'caution'] : ['against', 'unknown', 'caution'], voice);
  return points.length > 0 ? points : [{ mark: reasonMarks.unknown, text: sayReason(unseen, voice) }];
}

/** A part of these would tell a rate or an instalment without all that goes with it (Regulation Z, 12 CFR 1026.24): its reason has it whole. */
const isLoan = ({ formula }: WorkingEntry) => formula.startsWith('loan.');

/** The sums of a machine that haven't been told of one before it: what each need comes to, then what led to it. */
function sumsOf(entry: Entry, decisive: ReadonlySet<string>, told: Set<string>, voice: Voice): MachinePlan['sums'] {
  const isNew = (sum: unknown) => !told.has(JSON.stringify(sum)) && told.add(JSON.stringify(sum));
  const all = decisiveSums(entry, decisive).flatMap(({ need, sums }) => {
    const shown = sums.filter((sum) => isShownToBuyers(sum) && !isLoan(sum));
    return shown.map((sum) => ({ need, sum, isLast: sum === shown.at(-1) }));
  });
  return [...all.filter(({ isLast }) => isLast), ...all.filter(({ isLast }) => !isLast)].filter(({ sum }) => isNew(sum))
    .map(({ need, sum }) => ({ of: voice.words.needs[need] ?? need, ...sayWorking(sum, voice) }));
}

/** All that there is to tell of each machine that stands or is to be asked about: said once, for sheets of every extent. */
export type Gathered = readonly Omit<MachinePlan, 'more'>[];

export function gathered(view: SheetView): Gathered {
  const { shortlist, catalogue, handoff } = view;
  const decisive = decisiveNeeds(shortlist);
  const told = new Set<string>();
  return [...shortlist.shortlist, ...shortlist.askDealer].map((entry) => {
    const voice = { ...view.voice, machine: entry.machine };
    const asks = shortlist.askDealer.includes(entry);
    return {
      entry, asks, reasons: pointsOf(entry, ['for'], voice), drawbacks: drawbacksOf(entry, asks, voice), sums: sumsOf(entry, decisive, told, voice),
      units: entry.units.map((unit) => unitText(unit, { shortlist, catalogue, voice, own: handoff })),
    };
  });
}

/** What a sheet of an extent tells of the machines. */
export function planOf(all: Gathered, extent: Extent): Plan {
  const cut = <T>(list: readonly T[], most: number) => ({ told: list.slice(0, most), left: Math.max(0, list.length - most) });
  const machines = all.slice(0, extent.machines).map(({ entry, asks, ...lists }): MachinePlan => {
    const reasons = cut(lists.reasons, extent.reasons);
    const drawbacks = cut(lists.drawbacks, extent.drawbacks);
    const sums = cut(lists.sums, extent.sums);
    const units = cut(lists.units, extent.units);
    return {
      entry, asks, reasons: reasons.told, drawbacks: drawbacks.told, sums: sums.told, units: units.told,
      more: { reasons: reasons.left, drawbacks: drawbacks.left, sums: sums.left, units: units.left },
    };
  });
  return { machines, named: all.slice(extent.machines).map(({ entry }) => entry) };
}

/** Whether a sheet tells less than there is. */
export const isCut = ({ machines, named }: Plan, { ways, whyNot, asides, cautions }: Extent, { shortlist }: SheetView) =>
  named.length > 0 || machines.some(({ more }) => Object.values(more).some((count) => count > 0))
  || Math.max(shortlist.waysOut.length, shortlist.conflicts.sets.length) > ways || (whyNot !== 'because' && shortlist.ruledOut.length > 0)
  || (!asides && shortlist.tradeOffs.length + shortlist.changes.length > 0) || cautions === 'in-short';
