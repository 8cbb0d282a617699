import { html } from 'lit';
import { unsafeSVG } from 'lit/directives/unsafe-svg.js';
import { answersOf, type Answers } from '../../../answers/answers.ts';
import { catalogueOf, type Catalogue } from '../../../catalogue/catalogue.ts';
import { lineUp, type LineUp } from '../../../drawing/line-up.ts';
import { lineUpSvg } from '../../../drawing/svg.ts';
import { ruleBook, type RuleBook } from '../../../trade/book.ts';
import { lineUpWords } from '../../../widget/line-up.ts';
import type { Part } from '../paper.ts';
import { insideOf, toPixels } from '../sizes.ts';
import type { Extent } from './extent.ts';
import type { SheetView } from './view.ts';

/** How many times smaller than the machines a drawing may be, as draughtsmen choose them. */
const ratios = [40, 50, 75, 100, 125, 150, 200, 250] as const;
const millimetresAMetre = 1000;

type Drawn = { drawn: LineUp; ratio: number };

/** What a line-up is drawn from, in SI. */
export interface Drawable {
  catalogue: Catalogue;
  answers: Answers;
  book: RuleBook;
}

export const drawable = ({ catalogue, answers }: SheetView): Drawable => ({ catalogue: catalogueOf(catalogue), answers: answersOf(answers), book: ruleBook(catalogue.rules) });

/** The line-up as large as the room for it lets it be. */
function drawnIn(machines: readonly string[], { drawing, figures }: Extent, from: Drawable, { shortlist, size, voice }: SheetView): Drawn {
  const wish = {
    ...from, shortlist, machines, figures, view: 'side', layout: 'wrap', width: Math.floor(toPixels(insideOf(size).width)), units: voice.reader.units,
  } as const;
  const at = (ratio: number): Drawn => ({ ratio, drawn: lineUp({ ...wish, scaleAtMost: toPixels(millimetresAMetre) / ratio }) });
  const isRight = ({ ratio, drawn }: Drawn) => drawn.height <= toPixels(drawing) && Math.abs(drawn.scale * ratio / toPixels(millimetresAMetre) - 1) < 1e-4;
  for (const ratio of ratios) {
    const tried = at(ratio);
    if (isRight(tried)) return tried;
  }
  return at(ratios.at(-1)!);
}

/** The machines told of, drawn side by side with the buyer's own things, in ink and to one scale that is said. */
export function drawingPart(machines: readonly string[], extent: Extent, from: Drawable, view: SheetView): Part {
  const { own, shortlist, voice } = view;
  const { drawn, ratio } = drawnIn(machines, extent, from, view);
  const told = from.catalogue.machines.filter(({ id }) => machines.includes(id));
  const words = lineUpWords({ voice, standing: shortlist, needs: shortlist.needs, catalogue: { machines: told } });
  return {
    id: 'drawing',
    floats: true,
    body: html`
      <h2>${voice.words.lineUp.heading}</h2>
      <div class="drawing" dir="ltr" data-pixels-a-metre=${drawn.scale} data-bar-metres=${drawn.bar}>${unsafeSVG(lineUpSvg(drawn, { words, prefix: 'paper', still: true }))}</div>
      <p class="lesser">${own.scale(String(ratio))}</p>`,
  };
}
