import { en as handoff } from '../../../handoff/words/en.ts';
import type { HandOnWords } from './words.ts';

export const handOn: HandOnWords = {
  handoff,
  explained: 'The code, the link and the line to type hold your answers, and nothing about who you are. Whoever opens one sees what fits them that day. Nothing is sent or kept for it.',
  code: 'Scan it with a phone, or show it at the counter.',
  noLink: 'These answers are longer than a link or a code can be. The mail has them all the same.',
  link: { label: 'Link to your answers', copy: 'Copy the link' },
  typed: { label: 'To read out or to type', copy: 'Copy the line' },
  share: 'Share the link',
  shareTitle: 'Tractors that fit the work',
  copied: 'Copied.',
  marked: 'This browser doesn’t let a page copy. It is selected now: copy it by hand.',
  notShared: 'Sharing didn’t work here. Copy the link instead.',
  kept: { delivery: 'the postcode for delivery', tradeIn: 'what you trade in', owned: 'names of what you own' },
  mail: {
    heading: 'The shortlist as a mail',
    explained: 'Your own mail program sends it, to whom you like.',
    save: 'Save it as a mail file',
    saved: (file) => `Saved as ${file}. Open it, and your mail program shows it as a draft.`,
    write: 'Write a mail with it',
    shortened: 'A mail that is opened by a link has little room: it tells the first machines in short, and says so. The file has all of it.',
    noRoom: 'A mail that is opened by a link has no room for this. The file has.',
    file: 'tractor-shortlist',
  },
  opened: 'These are the answers from your link, and what they come to. You can change any of them below.',
  notOpened: {
    what: 'The answers of your link couldn’t be taken over.',
    again: 'Open the whole link once more, or answer the questions here.',
    newer: 'Load this page anew, or answer the questions here.',
    other: 'Answer the questions here.',
  },
};
