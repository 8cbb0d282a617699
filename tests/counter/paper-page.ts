import type { AnswersDocument } from '../../src/answers/schema.ts';
import type { CatalogueDocument } from '../../src/catalogue/schema.ts';
import { blankFormPaper } from '../../src/counter/paper/blank-form.ts';
import type { Fitted } from '../../src/counter/paper/fit-to-pages.ts';
import { putOnPaper, type OnPaper } from '../../src/counter/paper/on-paper.ts';
import { sheetPaper } from '../../src/counter/paper/sheet.ts';
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
import { namesIn, type Voice } from '../../src/reasons/say.ts';
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

export interface OnSheet {
  catalogue: CatalogueDocument;
  language: keyof typeof languages;
  units: 'us' | 'metric';
  size: SheetSize;
}

export const pageOfAnswers = 'https://www.dealer-of-used-tractors.example/used-tractors/';

/** Language, units and names a paper is told with. */
export function toldWith({ catalogue, language, units }: OnSheet) {
  const { words, own, handoff } = languages[language];
  const reader = readerFor(words, units, catalogue.dealer.locale, catalogue.dealer.currency);
  const voice: Voice = { words, reader, nameOf: namesIn(catalogue, reader) };
  return { voice, own, handoff };
}

export const sheetFor = (on: OnSheet & { answers: AnswersDocument; shortlist: Shortlist; page?: string }) =>
  sheetPaper({ ...toldWith(on), catalogue: on.catalogue, answers: on.answers, shortlist: on.shortlist, size: on.size, page: on.page ?? pageOfAnswers });
export const formFor = (on: OnSheet) => blankFormPaper({ ...toldWith(on), dealer: on.catalogue.dealer, size: on.size });

/** What a test asks of a page in a browser; one paper at a time lies on it. */
export interface PaperPage {
  sheet(on: Parameters<typeof sheetFor>[0]): Fitted;
  form(on: OnSheet): Fitted;
}

/** Lays papers on the page a test has opened. */
export function paperPage(): PaperPage {
  let lying: OnPaper | undefined;
  const lay = (paper: Parameters<typeof putOnPaper>[0]): Fitted => {
    lying?.takeDown();
    lying = putOnPaper(paper, document);
    const { pages, telling, fits } = lying;
    return { pages, telling, fits };
  };
  return { sheet: (on) => lay(sheetFor(on)), form: (on) => lay(formFor(on)) };
}
