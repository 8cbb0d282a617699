import type { Base, Finding, Mapping, SheetKind } from '../sheets/sheets.ts';
import type { View } from './desk.ts';

/** What the page asks of the desk. */
export type Call =
  | { call: 'open'; sheet: SheetKind; name: string; bytes: Uint8Array }
  | { call: 'document'; name: string; text: string }
  | { call: 'map'; sheet: SheetKind; mapping: Mapping }
  | { call: 'mend'; sheet: SheetKind; column: number; rows: readonly number[]; text: string }
  | { call: 'add'; sheet: SheetKind; values: Readonly<Record<string, string>> }
  | { call: 'undo' }
  | { call: 'set'; base: Pick<Base, 'id' | 'dealer'> & Partial<Base>; asOf: string }
  | { call: 'csv'; sheet: SheetKind };

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
