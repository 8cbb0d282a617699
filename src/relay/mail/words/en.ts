import type { MailWords } from './words.ts';

export const en: MailWords = {
  language: 'en',
  subjects: {
    notify: (dealer) => `Noted: word when one comes in – ${dealer}`,
    confirm: (dealer) => `Was it you? One click and the shortlist comes – ${dealer}`,
    dealerShortlist: (dealer) => `A buyer asked for a shortlist – ${dealer}`,
    dealerNotify: (dealer) => `A buyer wants word when one comes in – ${dealer}`,
    undelivered: (dealer) => `A buyer’s mail can’t be delivered – ${dealer}`,
  },
  asked: (dealer) => `You asked for this at ${dealer}.`,
  otherList: (now, seen) => (seen === undefined
    ? `This is worked out from the list of ${now}, not from the one you saw. Prices and machines may differ.`
    : `This is worked out from the list of ${now}; you saw that of ${seen}. Prices and machines may differ.`),
  otherRules: 'The way it is worked out has changed since you saw it. Some figures may differ.',
  shortened: 'Cut short to fit a mail.',
  open: 'See your answers',
  lineUp: {
    about: 'All bars are to one scale: solid for machines, outlined for your own things.',
    across: 'How wide', up: 'How high', along: 'How long',
  },
  demands: {
    heading: 'What the work asks for', none: 'Nothing that rules a machine out.',
    atLeast: (amount) => `at least ${amount}`, atMost: (amount) => `at most ${amount}`, safety: 'for safety',
  },
  notify: {
    title: 'You get word when one comes in',
    says: (dealer) => `${dealer} has your answers and your address, and writes to you when a machine comes in that does the work. There is nothing more for you to do.`,
  },
  confirm: {
    title: 'Was it you?',
    says: (dealer) => `Somebody asked for a shortlist of used tractors from ${dealer} to be sent to this address. If it was you, press the button. If not, do nothing: then nothing is sent.`,
    button: 'Yes, send it to me',
  },
  dealer: {
    titles: { shortlist: 'A buyer asked for a shortlist', notify: 'A buyer wants word when one comes in' },
    says: {
      shortlist: 'The buyer agreed that you get this copy. Reply to this mail and you write to the buyer.',
      notify: 'The buyer agreed that you get this copy. Reply to this mail when a machine comes in that does the work below.',
    },
    contactHeading: 'The buyer', name: 'Name', phone: 'Phone', mail: 'Mail', goodTime: 'Good time to call',
    goodTimes: { any: 'any time', morning: 'morning', midday: 'midday', afternoon: 'afternoon', evening: 'evening' },
    language: 'Language of the buyer’s mail', noContact: 'No name and no phone number were given.',
    toldBuyer: 'What fits, as the buyer is told',
    undelivered: {
      title: 'Mail to a buyer can’t be delivered',
      says: 'The mail this buyer asked for was refused, came back, or was taken by nobody for three days. It isn’t tried again. There may be a slip in the address; where a phone number stands below, you can call.',
    },
  },
  footer: {
    why: (dealer) => `This mail comes because it was asked for with this address at ${dealer}. It is one mail, not a list you are on.`,
    stop: 'No more mail from here, from any dealer:', stopLink: 'stop this mail',
    notAsked: 'You asked for nothing? Somebody else may have typed your address:', notAskedLink: 'I did not ask for this',
    toDealer: (dealer) => `This copy goes to ${dealer} because the buyer agreed to it. Use what stands here for this enquiry alone.`,
  },
};
