import { en as lot } from '../../../lot/words/en.ts';
import type { UnitWords } from './words.ts';

export const unit: UnitWords = {
  language: 'en',
  lot,
  print: 'Print',
  price: {
    open: 'What it comes to, delivered',
    typical: 'None of these is on the lot. The range is what such machines typically cost.',
    how: 'How it gets to you',
    delivered: 'The dealer delivers it',
    fetched: 'I fetch it',
    distance: 'How far from the dealer',
    ask: 'ask',
    columns: { what: 'What', amount: 'Amount' },
    tradeIn: 'Something in exchange',
    noTradeIn: 'Nothing',
    tradeIns: {
      'compact-tractor': 'a compact tractor', 'larger-tractor': 'a larger tractor', 'lawn-tractor': 'a lawn tractor', mower: 'another mower',
      'utility-vehicle': 'a utility vehicle', implements: 'implements', vehicle: 'a car, truck or trailer', other: 'something else',
    },
    tradeInHint: 'Only a wish: the dealer must see it first, and no value is put on it here.',
  },
  look: {
    open: 'What to look at on it',
    notKept: 'What you tick is kept only as long as this page is open.',
    count: (done, all) => `${done} of ${all} looked at`,
    done: 'Looked at',
    bad: 'Found bad',
    foundBad: (names) => `Found bad: ${names}.`,
    mend: 'Have it mended, or ask what mending costs, before you agree to anything.',
    paper: { howTo: 'First box: looked at. Second box: found bad.', serial: 'Serial number as read on the plate', day: 'Day', notes: 'Notes' },
  },
  costs: {
    open: 'What it costs over the years, beside another',
    explained: 'The older one with more on it, or the newer one with less? Choose another to set it beside, and your own years and hours.',
    beside: 'Beside',
    alone: 'Nothing else meets your musts, so there is nothing to set it beside.',
    pay: 'How you pay',
    ownMoney: 'At once, with your own money',
    parts: (name) => `What a year is made of: ${name}`,
    table: 'The chart as a table',
  },
  asking: { open: 'Its asking price beside others of this dealer' },
};
