import type { Part, Sheet } from '../parts.ts';
import type { BuyersContact, MailInput } from '../input.ts';
import { dayIn } from '../../../units/day.ts';
import { footer, goOn, reach, terms } from './closing.ts';
import { demandsPart } from './demands-part.ts';
import { whole, type Extent } from './extent.ts';
import { cautions, notCleared, resultParts } from './result-parts.ts';

type Told = Pick<Sheet, 'subject' | 'title' | 'preview' | 'parts' | 'footer'>;

const sheet = ({ catalogue, voice: { words } }: MailInput, told: Told): Sheet => ({ language: words.language, direction: words.direction, from: catalogue.dealer.name, ...told });

/** Which list it was worked out from, and whether that or the rules are others than those the buyer saw. */
function basis(extent: Extent, { shortlist, reckonedWith, sameRules, words, voice: { words: { result }, reader } }: MailInput): string[] {
  const day = (written: string) => dayIn(reader.locale, written);
  const now = day(shortlist.catalogue.asOf);
  return [
    result.asOf(now),
    ...(reckonedWith === 'as-seen' ? [] : [words.otherList(now, reckonedWith.seenAsOf === undefined ? undefined : day(reckonedWith.seenAsOf))]),
    ...(sameRules ? [] : [words.otherRules]),
    ...(extent === whole ? [] : [words.shortened]),
  ];
}

const inShort = ({ shortlist: { shortlist }, voice: { words: { result } } }: MailInput) => (shortlist.length > 0 ? result.standing(shortlist.length) : result.none);
const lines = (...said: string[]): Part => ({ kind: 'block', lines: said });

/** The shortlist, for who asked for it. */
export const shortlistSheet = (input: MailInput, extent: Extent): Sheet => sheet(input, {
  subject: input.own.subject(input.catalogue.dealer.name), title: input.voice.words.result.title, preview: inShort(input),
  parts: [
    lines(input.words.asked(input.catalogue.dealer.name), ...basis(extent, input)),
    ...notCleared(input), ...resultParts(extent, input), ...cautions(input), terms(input), ...goOn(input), reach(input),
  ],
  footer: footer(input),
});

/** That word comes when a machine does, and what was asked of it. */
export const noticeSheet = (input: MailInput): Sheet => {
  const { words, catalogue: { dealer } } = input;
  return sheet(input, {
    subject: words.subjects.notify(dealer.name), title: words.notify.title, preview: words.notify.says(dealer.name),
    parts: [lines(words.notify.says(dealer.name)), ...notCleared(input), demandsPart(input), ...cautions(input), terms(input), ...goOn(input), reach(input)],
    footer: footer(input),
  });
};

/** Asks whether it was he, before anything is sent that could be unwanted. */
export const questionSheet = (input: MailInput): Sheet => {
  const { words, catalogue: { dealer }, links } = input;
  return sheet(input, {
    subject: words.subjects.confirm(dealer.name), title: words.confirm.title, preview: words.confirm.says(dealer.name),
    parts: [{ kind: 'link', says: words.confirm.says(dealer.name), label: words.confirm.button, href: links.confirm }],
    footer: footer(input).slice(1),
  });
};

function contactPart({ name, phone, goodTime, address, language }: BuyersContact, { words: { dealer: said }, voice: { words: { joins } } }: MailInput): Part {
  const row = (label: string, value: string | undefined) => (value === undefined ? [] : [`${label}${joins.colon}${value}`]);
  return {
    kind: 'block', heading: said.contactHeading,
    lines: [
      ...row(said.name, name), ...row(said.phone, phone), ...row(said.mail, address), ...row(said.goodTime, goodTime && said.goodTimes[goodTime]),
      ...row(said.language, language), ...(name === undefined && phone === undefined ? [said.noContact] : []),
    ],
  };
}

/** What a dealer reads: who asks, what his work demands, and what he is told. */
export function dealersSheet(input: MailInput, contact: BuyersContact, extent: Extent): Sheet {
  const { kind, words: { dealer: said, subjects, footer: { toDealer } }, catalogue: { dealer } } = input;
  return sheet(input, {
    subject: subjects[kind === 'notify' ? 'dealerNotify' : 'dealerShortlist'](dealer.name), title: said.titles[kind], preview: said.says[kind],
    parts: [
      lines(said.says[kind], ...basis(extent, input)), contactPart(contact, input), demandsPart(input),
      { kind: 'block', heading: said.toldBuyer, lines: [] },
      ...notCleared(input), ...resultParts(extent, input), ...cautions(input), terms(input), ...goOn(input),
    ],
    footer: [{ text: toDealer(dealer.name) }],
  });
}

/** What a dealer reads where the buyer's own mail can't be delivered: who it was, and what he asked for. */
export function undeliveredSheet(input: MailInput, contact: BuyersContact): Sheet {
  const { words: { dealer: { undelivered }, subjects, footer: { toDealer } }, catalogue: { dealer } } = input;
  return sheet(input, {
    subject: subjects.undelivered(dealer.name), title: undelivered.title, preview: undelivered.says,
    parts: [lines(undelivered.says), contactPart(contact, input), demandsPart(input)],
    footer: [{ text: toDealer(dealer.name) }],
  });
}
