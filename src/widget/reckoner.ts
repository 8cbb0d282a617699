/** All that a page needs once there is something to reckon, and not before: it is fetched while the first question is read. */
export { answersOf } from '../answers/answers.ts';
export { readAnswers } from '../answers/read-answers.ts';
export { catalogueOf } from '../catalogue/catalogue.ts';
export { rank } from '../ranking/rank.ts';
export { namesIn } from '../reasons/say.ts';
export { shortlist } from '../reasons/shortlist.ts';
export { resultTemplate } from './result.ts';
export { usable } from './usable.ts';
