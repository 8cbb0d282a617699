import type { HandoffWords } from './words.ts';

export const en: HandoffWords = {
  language: 'en',
  subject: (dealer) => `Tractors that fit the work: ${dealer}`,
  priceOf: (day) => `price of ${day}`,
  goOn: 'Your answers, to look at, change or go on with:',
  shortened: {
    withLink: 'This mail is cut short to fit. The link at its end shows all of it.',
    alone: 'This mail is cut short to fit. Machines, reasons and cautions are left out.',
  },
  cautionsInShort: 'Read the operator’s manual first. ROPS up, belt on. No riders, bystanders clear, PTO shielded and off, no engine running indoors.',
  codeTitle: 'QR code with your answers, and nothing about who you are',
  leftOut: (places) => `Not handed on: ${places}. Only answers from a list, and figures, go along.`,
  tooLongToType: (length, most) => `With so many answers the form has ${length} characters; ${most} can be typed. Use the link or the QR code.`,
  refusals: {
    nothing: () => ({ what: 'Nothing was taken over.', why: 'The box is empty.', mend: 'Paste the link, or type the form.' }),
    'not-ours': () => ({ what: 'Nothing was taken over.', why: 'That holds no answers of this wizard.', mend: 'Copy the whole link, from https to its last letter.' }),
    'too-long': () => ({ what: 'Nothing was taken over.', why: 'That is longer than any answers are.', mend: 'Paste the link alone.' }),
    sign: ({ sign, group }) => ({ what: 'Nothing was taken over.', why: `No form has “${sign}”; it stands in group ${group}.`, mend: 'Look at that group again.' }),
    damaged: () => ({ what: 'Nothing was taken over.', why: 'A sign is wrong, missing or one too many.', mend: 'Compare group by group, or copy the link again.' }),
    newer: () => ({ what: 'Nothing was taken over.', why: 'The answers were made with a newer version of this page.', mend: 'Load the page anew, or answer the questions here.' }),
    'not-understood': () => ({ what: 'Nothing was taken over.', why: 'These are no answers a buyer could give.', mend: 'Answer the questions here.' }),
  },
};
