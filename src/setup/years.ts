const span = /^(\d{4})\s*(?:[-–—/+]|to|bis|a|à)\s*(\d{4})?$/i;

/** First and last year in one cell: "2015-2019", or "2018-" for what is still built. Undefined where it is no such thing. */
export function yearsIn(cell: string): { from: string; to: string } | undefined {
  const [, from, to = ''] = span.exec(cell.trim()) ?? [];
  return from === undefined ? undefined : { from, to };
}
