import type { MailWords } from './words.ts';

export const mail: MailWords = {
  language: 'en',
  shortlist: {
    heading: 'The shortlist by mail',
    what: 'One message with the machines, the reasons, the drawbacks, the prices and a link back to your answers. No newsletter.',
    send: 'Send it', sent: 'The shortlist is on its way',
  },
  notify: {
    heading: 'Word when one comes in',
    what: (dealer) => `${dealer} gets your address and your answers, and writes to you when a unit that does the work comes in.`,
    send: 'Ask for it', sent: (dealer) => `${dealer} knows what you are looking for`,
  },
  address: 'Your mail address',
  addressHint: 'For this one purpose. Written like name@place.example',
  addressFault: { missing: 'Type the address it should go to', wrong: 'Type one whole address, like name@place.example' },
  addressNear: (address) => `Did you mean ${address}?`,
  dealerCopy: (dealer) => `Let ${dealer} have a copy with my address, so that they can answer me`,
  statistics: (dealer) => `Let ${dealer} count my answers, without my address, when choosing what to buy in`,
  forTheDealer: 'For the dealer, if you like',
  name: 'Your name',
  nameFault: 'Type a name of letters, or leave it empty',
  phone: 'Phone',
  phoneFault: 'Type a number, or leave it empty',
  goodTime: 'Good time to call',
  goodTimes: { any: 'Any time', morning: 'Morning', midday: 'Midday', afternoon: 'Afternoon', evening: 'Evening' },
  privacy: 'Your address is kept for a week after sending and then deleted. Every message has a link that stops them.',
  sending: 'Sending…',
  working: 'Showing that this isn’t a machine; a few seconds…',
  sentTo: (address) => `It goes to ${address}.`,
  mayTake: 'It may take some minutes. If nothing comes, look among the unwanted mail, or ask the dealer.',
  later: {
    busy: 'The mail can’t be taken just now.', unreachable: 'The mail can’t be reached. Perhaps there is no network.',
    tryingAgain: (seconds) => `Trying again in ${seconds} s.`, tryAgain: 'Try again',
    otherWays: 'Nothing is lost: you can also print this page or save it as a file.',
  },
  refused: {
    faulty: 'The mail wasn’t taken as it is. Check the address, or ask the dealer.',
    other: (code) => `The mail wasn’t taken (${code}). Ask the dealer, or print this page.`,
  },
  close: 'Close',
};
