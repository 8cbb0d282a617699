import { answersOf } from '../../../answers/answers.ts';
import { thingsOf } from '../../../drawing/buyers-things.ts';
import { lineUp, type LineUpItem } from '../../../drawing/line-up.ts';
import { ruleBook } from '../../../trade/book.ts';
import { showAmount } from '../../../units/show.ts';
import type { MailInput } from '../input.ts';
import type { Bar, LineUpPart } from '../parts.ts';

/** Machines drawn: those a buyer compares, in the order of the result. */
const mostMachines = 6;
/** The drawing is asked for its figures alone, so that its room doesn't matter. */
const anyWidth = 600;

interface Size { name: string; metres: number | undefined; own: boolean; says: string }

function sizesOf({ shortlist, inSi, answers, voice }: MailInput): { items: readonly LineUpItem[]; own: ReturnType<typeof thingsOf> } {
  const book = ruleBook(inSi.rules);
  const machines = [...shortlist.shortlist, ...shortlist.askDealer].slice(0, mostMachines).map(({ machine }) => machine);
  const si = answersOf(answers);
  const { items } = lineUp({ catalogue: inSi, answers: si, book, shortlist, machines, view: 'rear', layout: 'row', width: anyWidth, units: voice.reader.units });
  return { items, own: thingsOf(si, book) };
}

/** The machines of a result and the buyer's own openings and trailer as bars of one scale; undefined where no size is known. */
export function lineUpPart(input: MailInput): LineUpPart | undefined {
  const { voice: { words: { lineUp: words, joins }, reader, nameOf }, words: { lineUp: own } } = input;
  const { items, own: { door, gate, trailer } } = sizesOf(input);
  const long = (metres: number) => showAmount(metres, 'm', reader);
  const thing = (id: 'door' | 'gate' | 'trailer', metres: number | undefined): Size => ({ name: words.things[id], metres, own: true, says: metres === undefined ? '' : long(metres) });
  const known = (measure: { value: number; assumed: boolean } | undefined) => (measure && !measure.assumed ? measure.value : undefined);
  const fitsOf = ({ fits }: LineUpItem, which: RegExp) => fits.filter(({ id }) => which.test(id)).map(({ id, outcome }) => `${words.fits[id]}${joins.colon}${words.outcomes[outcome]}`);
  const machines = (size: (item: LineUpItem) => number | undefined, says: (item: LineUpItem, figure: string) => string, which: RegExp): Size[] => items.map((item) => {
    const metres = size(item);
    return { name: nameOf(item.machine), metres, own: false, says: metres === undefined ? '' : [says(item, long(metres)), ...fitsOf(item, which)].join(joins.semicolon) };
  });
  const groups: { heading: string; sizes: Size[] }[] = [
    { heading: own.across, sizes: [thing('gate', known(gate)), thing('door', known(door?.width)), thing('trailer', trailer?.width), ...machines(({ width }) => width, (_, figure) => words.sizes.width(figure), /\.width$/)] },
    { heading: own.up, sizes: [thing('door', known(door?.height)), ...machines(({ height }) => height, ({ over }, figure) => words.sizes[over](figure), /^door\.height$/)] },
    { heading: own.along, sizes: [thing('trailer', trailer?.length), ...machines(({ length }) => length, ({ withLoader }, figure) => words.sizes[withLoader ? 'withLoader' : 'length'](figure), /\.length$/)] },
  ];
  const longest = Math.max(...groups.flatMap(({ sizes }) => sizes.flatMap(({ metres }) => metres ?? [])));
  if (items.length === 0 || !Number.isFinite(longest)) return undefined;
  const barOf = ({ name, metres, own: isOwn, says }: Size): Bar[] => (metres === undefined ? []
    : [{ text: `${name}${joins.colon}${says}`, percent: Math.max(1, Math.round((100 * metres) / longest)), own: isOwn }]);
  return {
    kind: 'line-up', heading: words.heading, about: own.about,
    groups: groups.map(({ heading, sizes }) => ({ heading, bars: sizes.flatMap(barOf) })).filter(({ bars }) => bars.some(({ own: isOwn }) => !isOwn)),
  };
}
