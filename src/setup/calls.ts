import type { Base, Finding, Mapping, SheetKind } from '../sheets/sheets.ts';
import type { View } from './view.ts';

/** What the page asks of the desk that changes what is on it. */
export type Change =
  | { call: 'open'; sheet: SheetKind | undefined; name: string; bytes: Uint8Array }
  | { call: 'document'; name: string; bytes: Uint8Array }
  | { call: 'part'; sheet: SheetKind; separator: string }
  | { call: 'swap'; sheet: SheetKind }
  | { call: 'map'; sheet: SheetKind; mapping: Mapping }
  | { call: 'decimals'; sheet: SheetKind; mark: '.' | ',' }
  | { call: 'mend'; sheet: SheetKind; column: number; rows: readonly number[]; text: string }
  | { call: 'fill'; sheet: SheetKind; rows: readonly number[] | undefined; values: Readonly<Record<string, string>> }
  | { call: 'fillFrom'; sheet: SheetKind; field: string; column: number }
  | { call: 'partYears'; sheet: SheetKind; column: number }
  | { call: 'rewrite'; sheet: SheetKind; row: number; line: string }
  | { call: 'drop'; sheet: SheetKind; rows: readonly number[] }
  | { call: 'add'; sheet: SheetKind; values: Readonly<Record<string, string>> }
  | { call: 'undo' }
  | { call: 'set'; base: Pick<Base, 'id' | 'dealer'> & Partial<Base>; asOf: string; withoutSold: boolean };

/** What it asks to have in hand; all of it is text. */
export type Wanted =
  | { call: 'csv'; sheet: SheetKind }
  | { call: 'line'; sheet: SheetKind; row: number }
  /** `spaced` for people to read. */
  | { call: 'catalogue'; spaced: boolean };

export type Call = Change | Wanted;

export interface Asked {
  id: number;
  call: Call;
}

/** Breaks a call off; what was there before it stays. */
export interface Stopped {
  stop: number;
}

/** What the desk answers: how far it is, and in the end what stands there now. */
export type Answer =
  | { id: number; done: number; of: number }
  | { id: number; view: View; refused: readonly Finding[] }
  | { id: number; text: string }
  | { id: number; stopped: true }
  | { id: number; failed: string };
