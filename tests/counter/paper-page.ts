import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { blankFormPaper } from '../../src/counter/paper/blank-form.ts';
import type { Fitted } from '../../src/counter/paper/fit-to-pages.ts';
import { printPaper, putOnPaper, type OnPaper } from '../../src/counter/paper/on-paper.ts';
import type { Paper } from '../../src/counter/paper/paper.ts';
import { sheetPaper } from '../../src/counter/paper/sheet.ts';
import type { SheetView } from '../../src/counter/paper/sheet/view.ts';
import type { SheetSize } from '../../src/counter/paper/sizes.ts';
import { de as paperDe } from '../../src/counter/paper/words/de.ts';
import { en as paperEn } from '../../src/counter/paper/words/en.ts';
import { es as paperEs } from '../../src/counter/paper/words/es.ts';
import { fr as paperFr } from '../../src/counter/paper/words/fr.ts';
import { de as handoffDe } from '../../src/handoff/words/de.ts';
import { en as handoffEn } from '../../src/handoff/words/en.ts';
import { es as handoffEs } from '../../src/handoff/words/es.ts';
import { fr as handoffFr } from '../../src/handoff/words/fr.ts';
import { readerFor } from '../../src/reasons/asking-voice.ts';
import { namesIn } from '../../src/reasons/say.ts';
import type { Shortlist } from '../../src/reasons/schema.ts';
import { de } from '../../src/reasons/words/de.ts';
import { en } from '../../src/reasons/words/en.ts';
import { es } from '../../src/reasons/words/es.ts';
import { fr } from '../../src/reasons/words/fr.ts';

const languages = {
  en: { words: en, own: paperEn, handoff: handoffEn }, de: { words: de, own: paperDe, handoff: handoffDe },
  es: { words: es, own: paperEs, handoff: handoffEs }, fr: { words: fr, own: paperFr, handoff: handoffFr },
} as const;
export const paperLanguages = Object.keys(languages) as (keyof typeof languages)[];

/** How a paper is told, and on what. */
export interface As {
  language: keyof typeof languages;
  units: 'us' | 'metric';
  size: SheetSize;
}

/** What it tells of. */
export interface Of {
  catalogue: CatalogueDocument;
  answers: AnswersDocument;
  shortlist: Shortlist;
}

export const pageOfAnswers = 'https://www.dealer-of-used-tractors.example/used-tractors/';

/** All a sheet is made from. */
export function viewOf({ catalogue, answers, shortlist }: Of, { language, units, size }: As): SheetView {
  const { words, own, handoff } = languages[language];
  const reader = readerFor(words, units, catalogue.dealer.locale, catalogue.dealer.currency);
  return { voice: { words, reader, nameOf: namesIn(catalogue, reader) }, own, handoff, catalogue, answers, shortlist, size, page: pageOfAnswers };
}

/** What a test asks of a page in a browser; one paper at a time lies on it. */
export interface PaperPage {
  tell(of: Of): void;
  sheet(as: As): Fitted;
  form(as: As): Fitted;
  /** Prints the sheet from the window, as a dealer does. */
  print(as: As): Promise<Fitted>;
}

/** Lays papers on the page a test has opened. */
export function paperPage(): PaperPage {
  let of: Of;
  let lying: OnPaper | undefined;
  const takeDown = () => {
    lying?.takeDown();
    lying = undefined;
  };
  const lay = (paper: Paper): Fitted => {
    takeDown();
    lying = putOnPaper(paper, document);
    const { pages, telling, fits } = lying;
    return { pages, telling, fits };
  };
  return {
    tell: (told) => { of = told; },
    sheet: (as) => lay(sheetPaper(viewOf(of, as))),
    form: (as) => lay(blankFormPaper({ ...viewOf(of, as), dealer: of.catalogue.dealer })),
    print(as) {
      takeDown();
      return printPaper(sheetPaper(viewOf(of, as)), window);
    },
  };
}
