import { createScanner, getLocation, parseTree, printParseErrorCode, type Node, type ParseError } from 'jsonc-parser';
import { placeOf, shown, type Fault } from '../documents/fault.ts';

export interface Position {
  line: number;
  column: number;
}

/** A fault with the place in the text where it stands. */
export interface PlacedFault extends Fault {
  offset: number;
}

/** A text read as JSON: what it holds, all that is wrong with it as JSON, and where everything stands. */
export interface JsonReading {
  /** Undefined where the text is no JSON. */
  document: { value: unknown } | undefined;
  faults: PlacedFault[];
  placed(fault: Fault): PlacedFault;
  /** The same for a fault that is the key itself, not what stands behind it. */
  placedKey(fault: Fault): PlacedFault;
  positionOf(fault: PlacedFault): Position;
}

/** A catalogue is eight deep; whatever is far beyond that was not written by a person. */
const deepest = 100;
/** One slip makes the rest of a text look wrong: what follows the first few says nothing more. */
const mostSyntaxFaults = 10;

const expectations: Readonly<Record<string, string>> = {
  InvalidSymbol: 'text in double quotes, a number, true, false, null, [ or {',
  InvalidNumberFormat: 'a number such as 12.5',
  PropertyNameExpected: 'a key in double quotes',
  ValueExpected: 'a value',
  ColonExpected: 'a colon',
  CommaExpected: 'a comma',
  CloseBraceExpected: 'a comma or }',
  CloseBracketExpected: 'a comma or ]',
  EndOfFileExpected: 'the end of the file',
  InvalidCommentToken: 'no comment, for JSON has none',
  UnexpectedEndOfComment: 'no comment, for JSON has none',
  UnexpectedEndOfString: 'a double quote that ends the text',
  UnexpectedEndOfNumber: 'a number such as 12.5',
  InvalidUnicode: 'four hexadecimal digits behind \\u',
  InvalidEscapeCharacter: 'one of " \\ / b f n r t u behind \\',
  InvalidCharacter: 'no tab, line break or other control character inside a text',
};

function syntaxFault(text: string, { error, offset, length }: ParseError): PlacedFault {
  const read = text.slice(offset, offset + Math.max(1, length));
  return {
    offset,
    place: placeOf(getLocation(text, offset).path.filter((key) => key !== '')),
    read: read === '' ? 'the end of the file' : shown(read),
    expected: expectations[printParseErrorCode(error)] ?? 'JSON',
  };
}

/** Where each line of a text begins. */
const lineStarts = (text: string) => [0, ...[...text.matchAll(/\n/g)].map(({ index }) => index + 1)];

/** Line and column of an offset, both from 1. */
function positionAt(offset: number, starts: readonly number[]): Position {
  let [low, high] = [0, starts.length];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (starts[middle]! <= offset) low = middle;
    else high = middle;
  }
  return { line: low + 1, column: offset - starts[low]! + 1 };
}

/** The faults of the syntax, without those that are an echo of another on the same line. */
function syntaxFaults(text: string, errors: readonly ParseError[], starts: readonly number[]): PlacedFault[] {
  const lines = new Set<number>();
  const telling: ParseError[] = [];
  for (const error of errors) {
    if (telling.length === mostSyntaxFaults) break;
    const { line } = positionAt(error.offset, starts);
    if (!lines.has(line)) telling.push(error);
    lines.add(line);
  }
  return telling.map((error) => syntaxFault(text, error));
}

/** Where brackets nest too deep for anything that reads a document by walking down into it. */
function tooDeepAt(text: string): number | undefined {
  const scanner = createScanner(text, true);
  let depth = 0;
  while (scanner.getPosition() < text.length) {
    scanner.scan();
    const token = text[scanner.getTokenOffset()];
    if (token === '{' || token === '[') depth += 1;
    if (token === '}' || token === ']') depth -= 1;
    if (depth > deepest) return scanner.getTokenOffset();
  }
  return undefined;
}

/** Where each place of the document stands in its text, and which keys stand there twice. */
function surveyed(root: Node) {
  const offsets = new Map<string, number>();
  const keyOffsets = new Map<string, number>();
  const twice: PlacedFault[] = [];
  const walk = (node: Node, path: readonly (string | number)[]) => {
    offsets.set(placeOf(path), node.offset);
    if (node.type === 'array') node.children!.forEach((child, index) => walk(child, [...path, index]));
    if (node.type !== 'object') return;
    const keys = new Set<string>();
    for (const { children } of node.children!) {
      const [key, value] = children!;
      const inside = [...path, key!.value as string];
      if (keys.has(key!.value)) twice.push({ offset: key!.offset, place: placeOf(inside), read: `the key ${shown(key!.value)} a second time`, expected: 'each key once' });
      keys.add(key!.value);
      keyOffsets.set(placeOf(inside), key!.offset);
      if (value) walk(value, inside);
    }
  };
  walk(root, []);
  return { offsets, keyOffsets, twice };
}

/** The place that holds a place: `a.b` for `a.b[3]`, `a` for `a.b`. */
const around = (place: string) => /^(.*)\[\d+\]$/s.exec(place)?.[1] ?? place.slice(0, Math.max(0, place.lastIndexOf('.')));

/** The offset of a place, or of the nearest thing around it where it isn't there. */
function offsetAt(place: string, offsets: ReadonlyMap<string, number>): number {
  return offsets.get(place) ?? (place === '' ? 0 : offsetAt(around(place), offsets));
}

type Offsets = ReadonlyMap<string, number>;

/** Reads a text as JSON. Never throws. */
export function readJson(text: string): JsonReading {
  const starts = lineStarts(text);
  const reading = (document: JsonReading['document'], faults: PlacedFault[], offsets: Offsets, keyOffsets: Offsets): JsonReading => ({
    document,
    faults,
    placed: (fault) => ({ ...fault, offset: offsetAt(fault.place, offsets) }),
    placedKey: (fault) => ({ ...fault, offset: keyOffsets.get(fault.place) ?? offsetAt(fault.place, offsets) }),
    positionOf: ({ offset }) => positionAt(offset, starts),
  });
  const noJson = (faults: PlacedFault[]) => reading(undefined, faults, new Map(), new Map());

  const tooDeep = tooDeepAt(text);
  if (tooDeep !== undefined) {
    return noJson([{ offset: tooDeep, place: '', read: `brackets more than ${deepest} deep`, expected: 'a document that nests less deep' }]);
  }
  const errors: ParseError[] = [];
  const root = parseTree(text, errors, { disallowComments: true });
  if (!root || errors.length > 0) return noJson(syntaxFaults(text, errors, starts));
  const { offsets, keyOffsets, twice } = surveyed(root);
  return reading({ value: JSON.parse(text) as unknown }, twice, offsets, keyOffsets);
}
