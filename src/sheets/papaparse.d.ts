/** What this room uses of papaparse. Its published types bring Node and the page with them, which the core must not know. */
declare module 'papaparse' {
  interface Results {
    data: string[][];
    errors: { code: string; row?: number }[];
    meta: { delimiter: string; linebreak: string; cursor: number };
  }
  interface Parser {
    pause(): void;
    resume(): void;
  }
  const papa: {
    parse(text: string, config: {
      delimiter?: string;
      newline?: string;
      preview?: number;
      chunkSize?: number;
      chunk?(results: Results, parser: Parser): void;
    }): Results;
    unparse(rows: readonly (readonly (string | number)[])[], config: { delimiter?: string; newline?: string; escapeFormulae?: RegExp }): string;
  };
  export = papa;
}
