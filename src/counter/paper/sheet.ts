import { noAnswers } from '../../answers/names.ts';
import type { AnswersDocument } from '../../answers/schema.ts';
import { pack, unpack, type Packed } from '../../handoff/pack.ts';
import { dayIn } from '../../units/day.ts';
import type { Paper, Part, Told } from './paper.ts';
import { answersPart } from './sheet/answers.ts';
import { cautionsPart, checksPart, termsParts } from './sheet/closing.ts';
import { drawable, drawingPart, type Drawable } from './sheet/drawing.ts';
import { extents, type Extent } from './sheet/extent.ts';
import { headPart } from './sheet/head.ts';
import { machinePart } from './sheet/machine.ts';
import { askPart, changesParts, notClearedParts, ruledOutParts, standingPart, waysOutParts } from './sheet/outcome.ts';
import { gathered, isCut, planOf, type Gathered } from './sheet/plan.ts';
import type { SheetView } from './sheet/view.ts';

/** What the code carries is what is read back: no text that somebody typed gets on paper. */
function carriedBy(packed: Packed): AnswersDocument {
  const read = unpack(packed.bytes);
  return 'answers' in read ? read.answers : noAnswers;
}

interface Prepared {
  packed: Packed;
  answers: AnswersDocument;
  machines: Gathered;
  drawn: Drawable;
}

function toldOf({ packed, answers, machines: all, drawn }: Prepared, extent: Extent, view: SheetView): Told {
  const plan = planOf(all, extent);
  const machines = plan.machines.map(({ entry }) => entry.machine);
  const drawing = machines.length > 0 && extent.drawing > 0 ? [drawingPart(machines, extent, drawn, view)] : [];
  const of = (asks: boolean) => plan.machines.filter((each) => each.asks === asks).map((each) => machinePart(each, extent, view));
  const asked = of(true);
  const parts: Part[] = [
    ...notClearedParts(view), answersPart(answers, extent, view), standingPart(plan, view), ...of(false),
    ...(asked.length > 0 ? [askPart(view), ...asked] : []), ...drawing, ...waysOutParts(extent, view), ...ruledOutParts(extent, view), ...changesParts(extent, view),
    checksPart(view), cautionsPart(extent, view), ...termsParts(view),
  ];
  return { head: headPart(packed, isCut(plan, extent, view), view), parts };
}

/** A shortlist with its answers as a sheet to hand over, on two pages at the most. */
export function sheetPaper(view: SheetView): Paper {
  const { catalogue: { dealer, asOf }, voice: { words, reader }, size } = view;
  const packed = pack(view.answers);
  const prepared: Prepared = { packed, answers: carriedBy(packed), machines: gathered(view), drawn: drawable(view) };
  return {
    size, language: words.language, direction: words.direction, columns: 1,
    foot: `${dealer.name} · ${words.result.asOf(dayIn(reader.locale, asOf))}`,
    tellings: extents.map((extent) => () => toldOf(prepared, extent, view)),
  };
}
