import { saidElsewhere, unitText } from '../../../handoff/letter/machine.ts';
import { decisiveNeeds, decisiveSums, isShownToBuyers } from '../../../reasons/decisive.ts';
import { reasonMarks } from '../../../reasons/reason-marks.ts';
import { sayReason, sayWorking, type SaidWorking, type Voice } from '../../../reasons/say.ts';
import type { Entry, Reason, Shortlist } from '../../../reasons/schema.ts';
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

/** The sums of a machine that haven't been told of one before it. */
function sumsOf(entry: Entry, decisive: ReadonlySet<string>, told: Set<string>, voice: Voice): MachinePlan['sums'] {
  const isNew = (sum: unknown) => !told.has(JSON.stringify(sum)) && told.add(JSON.stringify(sum));
  return decisiveSums(entry, decisive).flatMap(({ need, sums }) =>
    sums.filter(isShownToBuyers).filter(isNew).map((sum) => ({ of: voice.words.needs[need] ?? need, ...sayWorking(sum, voice) })));
}

const askedAbout = ({ askDealer }: Shortlist, entry: Entry) => askDealer.includes(entry);

/** What a sheet of an extent tells of the machines. */
export function planOf(view: SheetView, extent: Extent): Plan {
  const { shortlist, catalogue, handoff } = view;
  const entries = [...shortlist.shortlist, ...shortlist.askDealer];
  const decisive = decisiveNeeds(shortlist);
  const told = new Set<string>();
  const machines = entries.slice(0, extent.machines).map((entry): MachinePlan => {
    const voice = { ...view.voice, machine: entry.machine };
    const asks = askedAbout(shortlist, entry);
    const reasons = pointsOf(entry, ['for'], voice);
    const drawbacks = drawbacksOf(entry, asks, voice);
    const sums = sumsOf(entry, decisive, told, voice);
    const units = entry.units.map((unit) => unitText(unit, { shortlist, catalogue, voice, own: handoff }));
    const left = (all: readonly unknown[], most: number) => Math.max(0, all.length - most);
    return {
      entry, asks, reasons: reasons.slice(0, extent.reasons), drawbacks: drawbacks.slice(0, extent.drawbacks), sums: sums.slice(0, extent.sums),
      units: units.slice(0, extent.units),
      more: { reasons: left(reasons, extent.reasons), drawbacks: left(drawbacks, extent.drawbacks), sums: left(sums, extent.sums), units: left(units, extent.units) },
    };
  });
  return { machines, named: entries.slice(extent.machines) };
}

/** Whether a sheet tells less than there is. */
export const isCut = ({ machines, named }: Plan, { ways, whyNot, asides, cautions }: Extent, { shortlist }: SheetView) =>
  named.length > 0 || machines.some(({ more }) => Object.values(more).some((count) => count > 0))
  || Math.max(shortlist.waysOut.length, shortlist.conflicts.sets.length) > ways || (whyNot !== 'because' && shortlist.ruledOut.length > 0)
  || (!asides && shortlist.tradeOffs.length + shortlist.changes.length > 0) || cautions === 'in-short';
