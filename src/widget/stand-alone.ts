const mark = 'data-acre-paper';

export interface OwnSheet {
  /** As `@page` names it. */
  size: string;
  /** On each side [mm]. */
  margin: number;
  /** What hides it on the screen. */
  unseen: string;
}

/** The sheet and its margins are the document's: a rule for them counts in no shadow root. All else on the page isn't printed. */
const documentStyle = ({ size, margin, unseen }: OwnSheet) => `
@page { size: ${size}; margin: ${margin}mm; }
@media print {
  html, body { display: block !important; margin: 0 !important; padding: 0 !important; border: 0 !important; background: #fff !important; min-height: 0 !important; height: auto !important; }
  body > :not([${mark}]) { display: none !important; }
}
@media screen { [${mark}] { ${unseen} } }
`;

export function sheetWith(css: string): CSSStyleSheet {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(css);
  return sheet;
}

/** A place of its own on a page: printing the page prints what is put in it and nothing else, until it is taken down. */
export function standAlone(page: Document, sheet: OwnSheet): { host: HTMLElement; takeDown(): void } {
  const host = page.createElement('div');
  host.setAttribute(mark, '');
  const style = sheetWith(documentStyle(sheet));
  page.adoptedStyleSheets = [...page.adoptedStyleSheets, style];
  page.body.append(host);
  return {
    host,
    takeDown() {
      host.remove();
      page.adoptedStyleSheets = page.adoptedStyleSheets.filter((each) => each !== style);
    },
  };
}
