/**
 * The front door of the room: from the bytes of a dealer's spreadsheet to a catalogue, and back.
 *
 * ```
 * decode → parsing → matchColumns → (the dealer corrects the mapping) → readingRows → assembling
 *                                              queriesOf, unknownsOf tell what to look at again
 * ```
 * What may take long is a generator that yields its progress: `allAtOnce` runs it in one go. Everything handed
 * over is plain data, so that a worker can do the work and a page show it.
 */
export { decode, type Decoded } from './decode.ts';
export { parsing, type Dialect, type Table } from './table.ts';
export { isSure, matchColumns, mappingOf, type ColumnMatch, type ColumnTaken, type Mapping } from './match.ts';
export { firstRow, readingRows, type Conventions, type RowOf, type RowsReading } from './read-rows.ts';
export { assembling, readBase, type Assembled, type Base, type Parts } from './assemble.ts';
export { queriesOf, type Sources } from './queries.ts';
export { unknownsOf, type Unknown, type UnknownFigure } from './unknowns.ts';
export { csvOf } from './write.ts';
export { tableOf, type TableOfRows } from './table-of.ts';
export { canonicalJson, versionOf } from './version.ts';
export { headingOf, headingsOf, headingText, noneIn, type Heading, type Takes } from './headings/headings.ts';
export { limits } from './limits.ts';
export { readYesNo } from './cells/words.ts';
export { allAtOnce, type Progress, type Slices } from './slices.ts';
export { type Finding, type FindingCode, type SheetKind, type Weight } from './finding.ts';
export { lettersOf, lineOfFinding, sayFinding, sayUnknown, type SaidFinding } from './say.ts';
export { type SheetWords } from './words/words.ts';
