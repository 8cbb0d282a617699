import type { Heading, Takes } from '../headings/heading.ts';
import { folded } from '../../units/folded.ts';
import { limits } from '../limits.ts';
import { fault, kept, type CellContext, type CellReading } from './cell.ts';
import { readMeasure, readMoney, readPlain, readShare } from './numbers.ts';
import { isId, readChoice, readDay, readId, readLink, readYesNo } from './words.ts';

const controls = /(?![\t\n\r])\p{Cc}|\p{Cs}|[\ufffe\uffff]/u;
/** What a spreadsheet leaves where its formula failed. */
const failed = /^#(ref!|n\/a|value!|div\/0!|name\?|null!|num!|wert!|bezug!|nv|zahl!|valeur!|#+)$/i;
const saidUnknown = /^(n\/?a|n\.a\.|-+|–|—|\?+|unknown|unbekannt|inconnue?|desconocid[oa]|tbd|k\.?\s?a\.?|s\/d|n\.?c\.?)$/i;
export const saysNone = (cell: string) => /^(none|keine?s?|aucune?|ningun[oa]?|ninguno)$/i.test(folded(cell.trim()));

/** Words such as "n/a" are a text, and may be an id where they have its form. */
const meansUnknown = (cell: string, takes: Takes) =>
  saidUnknown.test(cell) && takes.as !== 'text' && !(takes.as === 'id' && isId(cell));

const whole = (read: CellReading, from: number, to: number): CellReading => {
  if (read.value === undefined) return read;
  const number = read.value as number;
  if (!Number.isInteger(number)) return fault('cell.whole', {});
  return number >= from && number <= to ? read : fault('cell.range', { from, to });
};

const firstYear = 1900;
const lastYear = 2200;
const mostWhole = 1_000_000;

/** Items of a list stand behind semicolons, strokes or line breaks; commas serve where no number may hold one. */
const itemsOf = (cell: string, comma: boolean) => cell.split(comma ? /[;|\n,]/ : /[;|\n]/).map((item) => item.trim()).filter((item) => item !== '');

function readList(cell: string, heading: Heading, each: Takes, context: CellContext): CellReading {
  if (saysNone(cell)) return { value: [] };
  const items = itemsOf(cell, each.as !== 'amount');
  // Nothing but separators says neither that there is none nor what there is.
  if (items.length === 0) return readAs(cell, heading, each, context);
  const readings = items.map((item) => readAs(item, heading, each, context));
  const bad = readings.find(({ value }) => value === undefined);
  if (bad) return bad.told ? bad : fault('cell.not-a-number', { example: heading.example });
  const told = readings.find((reading) => reading.told)?.told;
  return { value: readings.map(({ value }) => value), ...(told && { told }) };
}

function readPairs(cell: string): CellReading {
  if (saysNone(cell)) return { value: [] };
  const pairs = itemsOf(cell, true).map((item) => item.split('+').map((word) => word.trim()));
  return pairs.length > 0 && pairs.every((pair) => pair.length === 2 && pair.every((word) => word !== '')) ? { value: pairs } : fault('cell.pair', {});
}

function readAs(cell: string, heading: Heading, takes: Takes, context: CellContext): CellReading {
  const { example } = heading;
  switch (takes.as) {
    case 'id': return readId(cell);
    case 'text': return { value: cell };
    case 'link': return readLink(cell);
    case 'yes-no': return readYesNo(cell);
    case 'choice': return readChoice(cell, takes.words, takes.numbers ?? false);
    case 'whole': return whole(readPlain(cell, example, context), 0, mostWhole);
    case 'year': return whole(readPlain(cell, example, context), firstYear, lastYear);
    case 'number': return readPlain(cell, example, context);
    case 'decibels': return readPlain(cell.replace(/\s*dB\s*(\(A\)|A)?$/i, ''), example, context);
    case 'share': return readShare(cell, example, context);
    case 'day': return readDay(cell, context);
    case 'money': return readMoney(cell, example, context);
    case 'pairs': return readPairs(cell);
    case 'amount': return readMeasure(takes.of, cell, example, context, takes.zero);
    case 'list': return readList(cell, heading, takes.each, context);
    case 'hours': return readPlain(cell.replace(/\s*(h|hrs?|hours?|std\.?|stunden|heures?|horas?)$/i, ''), example, context);
  }
}

/**
 * Reads one cell for what its heading takes. Blank is unknown: neither value nor anything to say. Never throws.
 *
 * @param raw  the cell as the file has it
 */
export function readCell(raw: string, heading: Heading, context: CellContext): CellReading {
  if (raw.length > limits.cell) return fault('cell.too-long', { limit: limits.cell });
  const cell = raw.trim().normalize('NFC');
  if (cell === '') return {};
  const { takes } = heading;
  if (controls.test(cell)) return fault('cell.control', {});
  if (failed.test(cell)) return fault('cell.error', {});
  if (takes.as === 'choice' && readChoice(cell, takes.words, false).value !== undefined) return readAs(cell, heading, takes, context);
  if (meansUnknown(cell, takes)) return kept(undefined, 'cell.said-unknown', {});
  return readAs(cell, heading, takes, context);
}
