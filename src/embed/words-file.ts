/** A language as a file beside the scripts; the build takes its words for the English. */
export { asking } from '../reasons/words/en/asking.ts';
export { telling } from '../reasons/words/en/telling.ts';
export { handOn } from '../widget/hand-on/words/en.ts';
export { mail } from '../widget/mail/words/en.ts';
export { unit } from '../widget/unit/words/en.ts';
