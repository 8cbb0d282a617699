import { en as handoff } from '../../../handoff/words/en.ts';
import type { OpeningWords } from './words.ts';

export const opening: OpeningWords = {
  handoff,
  heading: 'Open a buyer’s answers',
  explained: 'From a phone, a paper or a mail. It holds what was answered, and nothing about who answered.',
  field: { label: 'Link or line', hint: 'Paste the link, or type the line as it is read out: small or capital letters, with hyphens or without.', open: 'Open' },
  refusals: {
    nothing: () => ({ what: 'Nothing was opened.', why: 'The box is empty.', mend: 'Paste the link, or type the line.' }),
    'not-ours': () => ({ what: 'Nothing was opened.', why: 'That holds no answers of the wizard.', mend: 'Have the whole link copied, from https to its last letter, or ask for the line to type.' }),
    'too-long': () => ({ what: 'Nothing was opened.', why: 'That is longer than any answers are.', mend: 'Paste the link alone.' }),
    sign: ({ sign, group }) => ({ what: 'Nothing was opened.', why: `No line has “${sign}”; it stands in group ${group}.`, mend: 'Have that group read out again.' }),
    damaged: () => ({ what: 'Nothing was opened.', why: 'A sign is wrong, missing or one too many.', mend: 'Have it read out again group by group, or the link copied again.' }),
    newer: () => ({ what: 'Nothing was opened.', why: 'The answers were made with a newer version than this counter has.', mend: 'Load this page anew. If that doesn’t help, ask the questions here.' }),
    'not-understood': () => ({ what: 'Nothing was opened.', why: 'These are no answers a buyer could give.', mend: 'Ask the questions here.' }),
  },
  camera: {
    start: 'Scan the code', starting: 'The camera is starting. The browser may ask whether it may.', stop: 'Stop the camera', picture: 'What the camera sees',
    hint: 'Hold the code before the camera. The picture stays on this device.',
    absent: {
      'no-reader': 'This browser can’t read codes. Ask for the line to type, or scan with the device’s own camera and paste the link here.',
      'no-camera': 'This page may use no camera: its address has to begin with https. Ask for the line to type.',
    },
    trouble: {
      refused: 'The browser doesn’t let this page use the camera. Allow it beside the address and try again, or type the line.',
      none: 'No camera was found. Plug one in and try again, or type the line.',
      busy: 'Another program has the camera. Close it and try again, or type the line.',
      failed: 'The camera stopped. Try again, or type the line.',
    },
    seen: {
      other: 'That is another code. Look for the one beside the buyer’s answers.',
      damaged: 'The code was read, but something in it is wrong. Have the page loaded anew and the code shown again, or type the line.',
      newer: 'The code was made with a newer version than this counter has. Load this page anew.',
    },
  },
  kept: { delivery: 'the postcode for delivery', tradeIn: 'what is traded in', owned: 'makes and names of what is owned already', material: 'the material, where it is a rare one', species: 'the kind of wood, where it is a rare one' },
  ask: (things) => `A link holds choices and figures alone. Ask, where it matters: ${things}.`,
  takeAlong: {
    heading: 'To take along', scan: 'Scan it with your phone. It holds your answers, and nothing about who you are.', link: 'As a link', typed: 'As a line to type',
    noLink: 'These answers are longer than a link or a code can be. Print them instead.',
  },
};
