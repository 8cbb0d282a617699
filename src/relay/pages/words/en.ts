import type { PageWords } from './words.ts';

export const en: PageWords = {
  language: 'en',
  stop: {
    ask: { title: 'Stop this mail?', says: 'You then get no more mail from here, from any dealer. Nothing changes until you press the button.', button: 'Stop this mail' },
    done: { title: 'Stopped', says: 'You get no more mail from here. What was still waiting is not sent.' },
  },
  notAsked: {
    ask: { title: 'Not asked for by you?', says: 'Somebody else may have typed your address. Press the button and you get no more mail from here; it also helps us to see misuse.', button: 'I did not ask for this' },
    done: { title: 'Thank you', says: 'You get no more mail from here. We are sorry that you were bothered.' },
  },
  confirm: {
    ask: { title: 'Was it you?', says: 'Press the button and the shortlist you asked for is sent to you. If it wasn’t you, close this page: then nothing is sent.', button: 'Yes, send it to me' },
    done: { title: 'On its way', says: 'The shortlist is sent in the next minutes. You can close this page.' },
  },
  unknown: { title: 'This link isn’t known', says: 'It may be cut short, or too old. Copy the whole link from the mail, or reply to the mail: the dealer can stop it too.' },
  tooOften: { title: 'Too often', says: 'That was tried too often with links that aren’t known. Try again in ten minutes.' },
  notNow: { title: 'Not at the moment', says: 'It can’t be done just now. Try again in a few minutes; the link stays good.' },
};
