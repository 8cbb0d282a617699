import type { LotWords } from '../../../lot/words/words.ts';
import type { TradeInKind } from '../buyer.ts';

/** What is said around one unit, closer. What is missing fails the type check. */
export interface UnitWords {
  language: string;
  /** What the lot itself says. */
  lot: LotWords;
  print: string;
  price: {
    open: string;
    /** Of a machine none of which is on the lot. */
    typical: string;
    how: string;
    delivered: string;
    fetched: string;
    distance: string;
    /** An amount somebody would have to be asked for. */
    ask: string;
    columns: Readonly<Record<'what' | 'amount', string>>;
    tradeIn: string;
    noTradeIn: string;
    tradeIns: Readonly<Record<TradeInKind, string>>;
    /** It stays a wish. */
    tradeInHint: string;
  };
  look: {
    open: string;
    notKept: string;
    count(done: number, all: number): string;
    done: string;
    bad: string;
    foundBad(names: string): string;
    /** What stands on the paper besides, to be filled in by pen. */
    paper: Readonly<Record<'howTo' | 'serial' | 'day' | 'notes', string>>;
    mend: string;
  };
  costs: {
    open: string;
    explained: string;
    beside: string;
    /** Nothing else stands that it could be set beside. */
    alone: string;
    pay: string;
    ownMoney: string;
    parts(name: string): string;
    table: string;
  };
  asking: { open: string };
}
