/** All that a page needs once there is something to reckon, and not before: it is fetched while the first question is read. */
export { answersOf } from '../answers/answers.ts';
export { readAnswers } from '../answers/read-answers.ts';
export { catalogueOf } from '../catalogue/catalogue.ts';
export { hasPicture } from '../drawing/pictures/picture-of.ts';
export { lineUpStyle } from '../drawing/style.ts';
export { beginVisit } from '../guide/guide.ts';
export { provingSkips } from '../guide/skips.ts';
export { rank } from '../ranking/rank.ts';
export { movesBetween } from '../reasons/moves.ts';
export { namesIn } from '../reasons/say.ts';
export { standingSoFar } from '../reasons/standing-so-far.ts';
export { shortlist } from '../reasons/shortlist.ts';
export { steerTo } from '../reasons/steers.ts';
export { checkTemplate } from './check.ts';
export { foldedLineUpTemplate, lineUpTemplate } from './line-up.ts';
export { pictureTemplate } from './picture.ts';
export { resultTemplate } from './result.ts';
export { usable } from './usable.ts';
