import { catalogue } from '../../catalogue/schema.ts';
import { readDocument } from '../../documents/read.ts';
import { isFigureId, rules, whyRefused, type FigureId, type Override, type Refusal } from '../../trade/book.ts';
import type { FigureRule } from '../../trade/record.ts';

/** A value in its unit, as it was written. */
export interface Written {
  value: number;
  unit: string;
}

export interface Refused extends Partial<Written> {
  id: string;
  value: number;
  refusal: Refusal;
}

/** What a dealer put into the rules of his catalogue. */
export interface DealersFigures {
  dealer: string;
  own: Readonly<Partial<Record<string, Written>>>;
  refused: readonly Refused[];
}

const ownUnit = (id: FigureId) => (rules[id] as FigureRule).unit;

/** The dealer's figures of a catalogue; undefined where its shape is not that of one. */
export function dealersFiguresOf(document: unknown): DealersFigures | undefined {
  const lot = readDocument(catalogue, document).value;
  if (!lot) return undefined;
  const own = new Map<string, Written>();
  const refused: Refused[] = [];
  for (const [id, override] of Object.entries<Override>(lot.rules ?? {})) {
    const refusal = whyRefused(id, override);
    const written = typeof override === 'number' ? { value: override, ...(isFigureId(id) && { unit: ownUnit(id) }) } : override;
    if (refusal) refused.push({ id, ...written, refusal });
    else own.set(id, { unit: '', ...written });
  }
  return { dealer: lot.dealer.name, own: Object.fromEntries(own), refused };
}
