import type { PaperWords } from './words.ts';

export const en: PaperWords = {
  language: 'en',
  scan: 'Scan to look at your answers, change them or go on. The code holds nothing about who you are.',
  type: 'Or type on our page:',
  scale: (ratio) => `Scale 1:${ratio} when printed at full size. The bar holds at any size.`,
  deciding: 'The sums that decide',
  gives: (result) => `gives ${result}`,
  source: (source) => `Source: ${source}.`,
  onlyNamed: {
    machines: (names, count) => (count === 1 ? `No room here for one more that you could look at: ${names}.` : `No room here for ${count} more that you could look at: ${names}.`),
    reasons: (count) => (count === 1 ? 'One more reason for it' : `${count} more reasons for it`),
    drawbacks: (count) => (count === 1 ? 'One more against it or not known' : `${count} more against it or not known`),
    sums: (count) => (count === 1 ? 'one more sum' : `${count} more sums`),
    units: (count) => (count === 1 ? 'One more on the lot' : `${count} more on the lot`),
    sheet: {
      withCode: 'Cut short to fit two pages; what is left out is counted. The page behind the code shows all of it.',
      alone: 'Cut short to fit two pages; what is left out is counted. Ask us to show you all of it.',
    },
  },
  checksHeading: 'When you look at the machine',
  checks: {
    hours: 'Hours: does the wear on pedals and seat fit the meter?',
    'service-record': 'Service record: bills for oil, filters and repairs',
    'serial-plate': 'Serial plate: there, readable, and of the year named',
    rops: 'Roll bar (ROPS): certified, with its label; nothing bent, cut or welded',
    'seat-belt': 'Seat belt: there, whole, and it locks',
    hydraulics: 'Hydraulics: no leaks, the loader stays up. Look, never feel',
    'loader-pins': 'Loader pins and bushings: how much play?',
    clutch: 'Clutch and drive: slip, noise in each range, brakes',
    pto: 'PTO: goes in and out cleanly; shield in place',
    tyres: 'Tyres: tread, cracks, one kind; liquid or weights?',
    recalls: 'Recalls: ask by the serial number; repairs in writing',
    liens: 'Liens: nobody else has a claim on it; in writing',
  },
  form: {
    title: 'What should the tractor do?',
    explained: 'Tick a box or write on the line. Leave out what you aren’t sure of. No name or address is wanted on this form.',
    secondBox: 'Tick the thick box too where it is a must: that rules out every machine that can’t do it.',
    onlyIf: (options) => `Only for: ${options}`,
    number: (places) => `Number them by what matters most, 1 to ${places}.`,
  },
};
