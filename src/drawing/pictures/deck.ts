import { taskOf } from '../../answers/answers.ts';
import type { RuleBook } from '../../trade/book.ts';
import { known, measuresOf, type Measures } from '../measures.ts';
import type { Outfit } from '../outfit.ts';
import { proportions as share } from '../proportions.ts';
import { circle, path, type Shape } from '../shape.ts';
import { sideView } from '../side-view.ts';
import type { Given, Picture, PictureCell } from './picture.ts';

/** A tractor of nobody's: all its sizes are those that are taken where the catalogue is silent. */
const plain: Outfit = {
  machine: { id: '', name: '', make: '', frame: '', tier: 'standard', years: { from: 0, meant: 'model' } }, standing: 'not-judged', cab: false,
};

/** That it rests on assumed sizes goes without saying here, so that none of it is dashed. */
function plainMeasures(book: RuleBook): Measures {
  const measures = measuresOf(plain, book, false);
  const sizes = Object.entries(measures).map(([key, size]) => [key, typeof size === 'object' ? known(size.value) : size]);
  return Object.fromEntries(sizes) as Measures;
}

/** A mower of its own behind the hitch: its deck, the frame that hangs on the links, and the wheels it runs on. */
function rearMower({ rearTyre, back, wheelbase }: Measures): Shape[] {
  const r = rearTyre.value / 2;
  const hitch = -Math.max(back, r * 1.05);
  const [right, wheel, high] = [hitch - 0.06, 0.12, share.deckTop];
  const left = right - wheelbase.value * 0.6;
  const gauge = (x: number) => [
    path({ part: 'deck', line: 'light' }, [[x + 0.1, high + 0.05], [x, high + 0.05], [x, wheel]]),
    circle({ part: 'deck', line: 'heavy', filled: true }, [x, wheel], wheel), circle({ part: 'deck', line: 'light' }, [x, wheel], wheel * 0.3),
  ];
  return [
    path({ part: 'deck', line: 'light' }, [[right - 0.06, high], [hitch, r * 0.62], [hitch + r * 0.12, r * 1.15], [left + 0.25, high]]),
    path({ part: 'deck', line: 'heavy', filled: true, closed: true, corner: 0.03 }, [
      [left, share.deckBottom], [left, high * 0.8], [left + 0.1, high], [right - 0.1, high], [right, high * 0.8], [right, share.deckBottom],
    ]),
    path({ part: 'deck', line: 'light', filled: true, closed: true }, [[left + 0.35, high], [left + 0.38, high + 0.11], [left + 0.55, high + 0.11], [left + 0.58, high]]),
    ...gauge(left - 0.1),
  ];
}

/** A tractor from the side with its mower between the axles, and with one behind it. */
export function deckPicture({ answers, book, words }: Given): Picture {
  const measures = plainMeasures(book);
  const chosen = taskOf(answers, 'mow-lawn')?.deck;
  const cell = (place: 'belly' | 'rear', shapes: readonly Shape[]): PictureCell => ({
    shapes, dimensions: [], lines: [], own: place === chosen,
    name: place === chosen ? words.chosen(words.deck.names[place]) : words.deck.names[place],
  });
  return {
    title: words.deck.title, scale: { least: 45, most: 80 },
    cells: [
      cell('belly', sideView({ ...plain, deck: measures.width.value }, measures).shapes),
      cell('rear', [...sideView(plain, measures).shapes, ...rearMower(measures)]),
    ],
  };
}
