import { folded } from './folded.ts';
import { factors, type Amount, type Kind, type UnitOf } from './quantity.ts';

/** Why a typed amount wasn't understood. */
export type ReadFault = 'empty' | 'not-a-number' | 'unknown-unit' | 'ambiguous';

export type TypedAmount<K extends Kind> = { amount: Amount<K> } | { fault: 'ambiguous'; either: readonly [Amount<K>, Amount<K>] } | { fault: Exclude<ReadFault, 'ambiguous'>; word?: string };

/** A number with one mark that may set off decimals or thousands: what it is read either way, decimals first. */
export interface Either {
  either: readonly [number, number];
}

/**
 * Other ways people write a unit, in any language they may read the page in; the symbol itself always counts.
 * What means two things is left out: the French "mille" is a mile or a thousand, a German "Morgen" hangs on the region.
 */
const spellings: Record<string, readonly string[]> = {
  lb: ['lbs', 'pound', 'pounds', '#', 'pfund', 'libra', 'libras', 'livre', 'livres'],
  kg: ['kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramm', 'kilogramo', 'kilogramos', 'kilogramme', 'kilogrammes'],
  t: ['tonne', 'tonnes', 'tonnen', 'tonelada', 'toneladas'],
  ton: ['tons'],
  m: ['meter', 'meters', 'metre', 'metres', 'metern', 'metro', 'metros', 'mètre', 'mètres'],
  cm: ['centimeter', 'centimeters', 'centimetre', 'centimetres', 'zentimeter', 'zentimetern', 'centímetro', 'centímetros', 'centimètre', 'centimètres'],
  mm: ['millimeter', 'millimeters', 'millimetre', 'millimetres', 'millimetern', 'milímetro', 'milímetros', 'millimètre', 'millimètres'],
  in: ['inch', 'inches', '"', '″', '”', "''", 'zoll', 'pulgada', 'pulgadas', 'pouce', 'pouces', 'po'],
  ft: ['foot', 'feet', "'", '′', '’', 'fuß', 'pie', 'pies', 'pied', 'pieds', 'pi'],
  yd: ['yard', 'yards', 'yds', 'yarda', 'yardas', 'verge', 'verges'],
  mi: ['mile', 'miles', 'meile', 'meilen', 'milla', 'millas'],
  acre: ['acres', 'ac'],
  ha: ['hectare', 'hectares', 'hektar', 'hectárea', 'hectáreas'],
  m2: [
    'm²', 'sqm', 'sq m', 'square metre', 'square metres', 'square meter', 'square meters', 'qm', 'quadratmeter', 'quadratmetern', 'metro cuadrado', 'metros cuadrados', 'mètre carré', 'mètres carrés',
  ],
  ft2: ['ft²', 'sqft', 'sq ft', 'square feet', 'square foot', 'quadratfuß', 'pie cuadrado', 'pies cuadrados', 'pied carré', 'pieds carrés', 'pi²'],
  m3: ['m³', 'cbm', 'cubic metre', 'cubic metres', 'cubic meter', 'cubic meters', 'kubikmeter', 'kubikmetern', 'metro cúbico', 'metros cúbicos', 'mètre cube', 'mètres cubes'],
  yd3: ['yd³', 'cu yd', 'cuyd', 'cubic yard', 'cubic yards', 'yard', 'yards', 'yd', 'yds', 'kubikyard', 'kubikyards', 'yarda cúbica', 'yardas cúbicas', 'yarda', 'yardas', 'verge cube', 'verges cubes', 'verge', 'verges'],
  ft3: ['ft³', 'cu ft', 'cubic feet', 'cubic foot', 'kubikfuß', 'pie cúbico', 'pies cúbicos', 'pied cube', 'pieds cubes', 'pi³'],
  h: ['hr', 'hrs', 'hour', 'hours', 'stunde', 'stunden', 'std', 'hora', 'horas', 'heure', 'heures'],
  min: ['mins', 'minute', 'minutes', 'minuten', 'minuto', 'minutos'],
  hp: ['horsepower'],
  kW: ['kilowatt', 'kilowatts'],
  deg: ['°', 'degree', 'degrees', 'grad', 'grados', 'degrés'],
};

function unitNamed<K extends Kind>(kind: K, word: string): UnitOf<K> | undefined {
  const units = Object.keys(factors[kind]) as UnitOf<K>[];
  const plain = word.replace(/\.$/, '');
  return units.find((unit) => unit === plain)
    ?? units.find((unit) => unit.toLowerCase() === plain.toLowerCase())
    ?? units.find((unit) => spellings[unit]?.some((spelling) => folded(spelling) === folded(plain)));
}

/**
 * A number as people type it: "1,200", "1.5", "1 200", "1½", "1/2". Where both marks stand, the last is the
 * decimal mark; where one stands before exactly three digits it groups in the reader's language or it is
 * ambiguous.
 */
export function readNumber(text: string, decimalMark: '.' | ',' = '.'): number | Either | undefined {
  const halves = { '½': 0.5, '¼': 0.25, '¾': 0.75 } as const;
  const plain = text.trim().replace(/[\s\u00a0\u202f]+(?=\d{3}(\D|$))/g, '');
  const fraction = /^(?:(\d+)?\s*([½¼¾])|(?:(\d+)\s+)?(\d+)\s*\/\s*(\d+))$/.exec(plain);
  if (fraction) {
    const [, beside, mark, before, over, under] = fraction;
    const part = mark ? halves[mark as keyof typeof halves] : Number(over) / Number(under);
    return Number.isFinite(part) ? Number(beside ?? before ?? 0) + part : undefined;
  }
  if (!/^\d[\d.,]*$|^[.,]\d+$/.test(plain)) return undefined;
  const marks = [...plain.matchAll(/[.,]/g)].map(([mark]) => mark);
  const kindsOfMark = new Set(marks);
  const last = marks.at(-1);
  if (last === undefined) return Number(plain);
  const [tail] = plain.split(last).slice(-1);
  if (kindsOfMark.size === 2) return Number(plain.replaceAll(last === '.' ? ',' : '.', '').replace(last, '.'));
  const grouping = marks.length > 1 || (tail!.length === 3 && last !== decimalMark);
  if (grouping) return /^\d{1,3}([.,]\d{3})+$/.test(plain) ? Number(plain.replaceAll(last, '')) : undefined;
  // "1.500" in a language whose decimal mark it is: three decimals, or a thousand by a foreign hand?
  const decimal = Number(plain.replace(last, '.'));
  return /^[1-9]\d{0,2}[.,]\d{3}$/.test(plain) ? { either: [decimal, Number(plain.replace(last, ''))] } : decimal;
}

/** A 2 or 3 that belongs to the unit; of a length "6ft2" is six feet two. */
const powerOf = (kind: Kind) => (kind === 'length' ? /\b(m|ft|pi|yd)([23])\b/giu : /(?<!\p{L})(m|ft|pi|yd)([23])\b/giu);

/** A number and the word behind it; a unit's own square is written as such before. */
const part = /([\d½¼¾.,/\s\u00a0\u202f]*[\d½¼¾])\s*([^\d½¼¾]*)/g;

/**
 * Reads an amount as people type it: "1.5 ac", "25hp", "1,200", "6 ft 6", "6'6\"", "2 m 10". The unit typed
 * first is kept; a smaller part is folded into it. Without a unit the amount is in `unit`.
 */
export function readAmount<K extends Kind>(kind: K, typed: string, unit: UnitOf<K>, decimalMark: '.' | ',' = '.'): TypedAmount<K> {
  const text = typed.trim().replace(powerOf(kind), (_, base: string, power: string) => `${base}${power === '2' ? '²' : '³'}`);
  if (text === '') return { fault: 'empty' };
  const parts: { value: number; unit: UnitOf<K> | undefined }[] = [];
  let either: Either['either'] | undefined;
  const found = [...text.matchAll(part)];
  if (found.map(([all]) => all).join('') !== text) return { fault: 'not-a-number' };
  for (const [, digits, word] of found) {
    const number = readNumber(digits!, decimalMark);
    if (number === undefined) return { fault: 'not-a-number' };
    if (typeof number === 'object') ({ either } = number);
    const value = typeof number === 'object' ? number.either[0] : number;
    const name = word!.trim();
    const named = name === '' ? undefined : unitNamed(kind, name);
    if (name !== '' && named === undefined) return { fault: 'unknown-unit', word: name };
    parts.push({ value, unit: named });
  }
  const [first, second] = parts;
  if (!first || parts.length > 2) return { fault: 'not-a-number' };
  const amountOf = (value: number): Amount<K> => ({ value, unit: first.unit ?? unit });
  if (!second) return either ? { fault: 'ambiguous', either: [amountOf(either[0]), amountOf(either[1])] } : { amount: amountOf(first.value) };

  const smaller: Record<string, string> = { ft: 'in', m: 'cm', h: 'min' };
  const below = (first.unit && smaller[first.unit]) as UnitOf<K> | undefined;
  if (!first.unit || !below || (second.unit && second.unit !== below)) return { fault: 'not-a-number' };
  const ratio = (factors[kind] as Record<string, number>)[below]! / (factors[kind] as Record<string, number>)[first.unit]!;
  return { amount: { value: Number((first.value + second.value * ratio).toPrecision(12)), unit: first.unit } };
}
