import { nearest } from '../../documents/nearest.ts';
import { readAmount, readNumber } from '../../units/read.ts';
import { unitsOf, type Kind, type Unit, type UnitOf } from '../../units/quantity.ts';
import { fault, kept, type CellContext, type CellReading } from './cell.ts';

/** No figure of a machine takes more; it bounds what the patterns below are tried on. */
const longestNumber = 60;

/** Why what stands there is no figure at all, whatever its unit; undefined where it may be one. */
function refused(cell: string, example: string): CellReading | undefined {
  if (/^[=+@]/.test(cell)) return fault('cell.formula', {});
  if (/^[-−–(]\s*[\d.,½¼¾]/.test(cell)) return fault('cell.negative', {});
  // A spreadsheet has rounded what it writes so: the digits it lost are not ours to make up.
  if (/^[\d.,]+e[+-]?\d+$/i.test(cell)) return fault('cell.not-a-number', { example });
  return cell.length > longestNumber ? fault('cell.not-a-number', { example }) : undefined;
}

const written = (value: number, unit = '') => `${value}${unit && ` ${unit}`}`;

/** A number without a unit; `value` of the reading is a finite number. */
export function readPlain(cell: string, example: string, { dialect }: CellContext): CellReading {
  const wrong = refused(cell, example);
  if (wrong) return wrong;
  const number = readNumber(cell, dialect.decimalMark);
  if (number === undefined) return fault('cell.not-a-number', { example });
  if (typeof number === 'number') return Number.isFinite(number) ? { value: number } : fault('cell.not-a-number', { example });
  const [decimal, thousands] = number.either;
  return dialect.decimalMarkFrom === 'given' ? { value: decimal } : fault('cell.ambiguous', { either: [written(decimal), written(thousands)] });
}

/** Units of bare numbers where neither heading nor cell says one: those a dealer of such units writes. */
const usual: Readonly<Record<'us' | 'metric', Partial<Record<Kind, Unit>>>> = {
  us: { mass: 'lb', length: 'in', power: 'hp', force: 'lbf', pressure: 'psi', flow: 'gpm', volume: 'ft3' },
  metric: { mass: 'kg', length: 'mm', power: 'kW', force: 'N', pressure: 'bar', flow: 'L/min', volume: 'L' },
};
/** Kinds that the trade measures in one unit everywhere. */
const onlyOne: Partial<Record<Kind, Unit>> = { rotation: 'rpm', acceleration: 'm/s2', time: 'h' };

const isBare = (cell: string) => !/[^\d.,\s½¼¾/]/.test(cell);

/**
 * A figure with its unit: that of the cell, else of the heading, else the usual one of the dealer's units, with a notice.
 * `value` of the reading is an `Amount`, more than nothing unless zero may stand.
 */
export function readMeasure<K extends Kind>(kind: K, cell: string, example: string, context: CellContext, zero = false): CellReading {
  const wrong = refused(cell, example);
  if (wrong) return wrong;
  const { dialect: { decimalMark, decimalMarkFrom }, units } = context;
  const ofHeading = unitNamed(kind, context.unit);
  const only = onlyOne[kind] as UnitOf<K> | undefined;
  const unit = ofHeading ?? only ?? (usual[units][kind] as UnitOf<K> | undefined) ?? unitsOf(kind)[0]!;
  const typed = readAmount(kind, cell, unit, decimalMark);
  if ('fault' in typed && typed.fault !== 'ambiguous') {
    if (typed.fault === 'unknown-unit' && typed.word) {
      return fault('cell.unit', { unit: typed.word, nearest: nearest(typed.word, unitsOf(kind)), units: unitsOf(kind) });
    }
    return fault('cell.not-a-number', { example });
  }
  if ('fault' in typed && decimalMarkFrom !== 'given') {
    const [decimal, thousands] = typed.either;
    return fault('cell.ambiguous', { either: [written(decimal.value, isBare(cell) ? '' : decimal.unit), written(thousands.value, isBare(cell) ? '' : thousands.unit)] });
  }
  const amount = 'fault' in typed ? typed.either[0] : typed.amount;
  if (!Number.isFinite(amount.value)) return fault('cell.not-a-number', { example });
  if (amount.value === 0 && !zero) return fault('cell.zero', {});
  return isBare(cell) && !ofHeading && !only && amount.value !== 0 ? kept(amount, 'column.unit-assumed', { unit }) : { value: amount };
}

/** The unit a word means, in any spelling that amounts are typed in. */
export function unitNamed<K extends Kind>(kind: K, word: string | undefined): UnitOf<K> | undefined {
  if (word === undefined) return undefined;
  const read = readAmount(kind, `1 ${word}`, unitsOf(kind)[0]!);
  return 'amount' in read && read.amount.value === 1 ? read.amount.unit : undefined;
}

/** Signs and words for currencies of ISO 4217; a map, for a cell may say `constructor`. */
const signs: ReadonlyMap<string, readonly string[]> = new Map([
  ['$', ['USD', 'CAD', 'AUD', 'NZD', 'MXN']], ['us$', ['USD']], ['€', ['EUR']], ['euro', ['EUR']], ['euros', ['EUR']], ['£', ['GBP']], ['fr.', ['CHF']],
]);

/** Money in the dealer's currency; `value` of the reading is money of a document. */
export function readMoney(cell: string, example: string, context: CellContext): CellReading {
  const { currency } = context;
  const [, before = '', number = '', behind = ''] = /^([^\d.,½¼¾(=+@−–-]*)(.*?)([^\d½¼¾)]*)$/su.exec(cell) ?? [];
  const words = [before, behind].map((word) => word.trim().toLowerCase()).filter((word) => word !== '' && word !== '.-' && word !== '.–');
  if (words.length === 0 && context.unit !== undefined) words.push(context.unit.toLowerCase());
  const foreign = words.find((word) => word !== currency.toLowerCase() && !signs.get(word)?.includes(currency));
  const read = readPlain(number.trim(), example, context);
  if (read.value === undefined) return read;
  if (foreign !== undefined) return /^[a-z]{3}$/.test(foreign) || signs.has(foreign) ? fault('cell.currency', { currency }) : fault('cell.not-a-number', { example });
  return { value: { value: read.value, currency } };
}

/** A share from 0 to 1, or in percent. */
export function readShare(cell: string, example: string, context: CellContext): CellReading {
  const percent = /^(.*?)\s*%$/s.exec(cell);
  const read = readPlain(percent ? percent[1]! : cell, example, context);
  if (read.value === undefined) return read;
  const value = percent || context.unit === '%' ? Number(((read.value as number) / 100).toPrecision(12)) : (read.value as number);
  return value <= 1 ? { value } : fault('cell.range', { from: 0, to: 1 });
}
