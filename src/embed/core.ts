/**
 * What `acre-to-axle/core` gives whoever reckons without a page, in Node or in a worker: documents in, the shortlist
 * out, and the same said in words. Pure and synchronous; the words are handed in from `acre-to-axle/languages/…`.
 */
export { readAnswers, type AnswersReading } from '../answers/read-answers.ts';
export { answersFormat, type AnswersDocument } from '../answers/schema.ts';
export { readCatalogue, type CatalogueReading } from '../catalogue/read-catalogue.ts';
export { catalogueFormat, type CatalogueDocument } from '../catalogue/schema.ts';
export type { Fault } from '../documents/fault.ts';
export { readerFor } from '../reasons/asking-voice.ts';
export { compare } from '../reasons/compare.ts';
export { namesIn, sayCaution, sayReason, type Voice } from '../reasons/say.ts';
export { sayPackagePrice } from '../reasons/say-package-price.ts';
export { shortlistFormat, type Contrast, type Reason, type Shortlist } from '../reasons/schema.ts';
export { shortlist } from '../reasons/shortlist.ts';
export type { PrintedWords, Words } from '../reasons/words/words.ts';
export { rulesVersion } from '../trade/book.ts';
