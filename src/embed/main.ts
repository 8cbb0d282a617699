/** What `acre-to-axle` gives whoever imports it: the class of the element and its types. Nothing is registered: `acre-to-axle/define` does that. */
export { AcreToAxle } from '../widget/element.ts';
export { languageNames, languageTags, type LanguageTag } from '../widget/languages.ts';
export type { AcreEventDetails, AcreEvents } from '../widget/events.ts';
export type { AnswersDocument } from '../answers/schema.ts';
export type { CatalogueDocument } from '../catalogue/schema.ts';
export type { Shortlist } from '../reasons/schema.ts';
