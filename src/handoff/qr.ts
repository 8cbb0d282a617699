import { correction, generate } from 'lean-qr';
import { escaped } from '../drawing/svg-parts.ts';

/** White around the code, in modules, that a scanner wants (ISO/IEC 18004). */
const quietZone = 4;

/** Modules of a code by row, dark ones true, without the white around them. */
export type Modules = readonly (readonly boolean[])[];

/** Other letters than ASCII as an address has them: not all scanners read those of a code alike. */
const plain = (address: string) => address.replace(/\p{Cs}/gu, '\ufffd').replace(/[^!-~]+/g, encodeURIComponent);

/**
 * A QR code of at least level M: it is still read where 15 % of it is dirty or glared over.
 *
 * @returns undefined where the address is too long for any code
 */
export function qrModules(address: string): Modules | undefined {
  try {
    const code = generate(plain(address), { minCorrectionLevel: correction.M });
    const places = Array.from({ length: code.size }, (_, place) => place);
    return places.map((y) => places.map((x) => code.get(x, y)));
  } catch {
    return undefined;
  }
}

/** The dark modules as one path, each run of a row a strip of one module's height. */
const pathOf = (modules: Modules) => modules.flatMap((row, y) => row.flatMap((dark, x) => {
  if (!dark || row[x - 1]) return [];
  const end = row.indexOf(false, x);
  return [`M${x + quietZone} ${y + quietZone}h${(end < 0 ? row.length : end) - x}v1H${x + quietZone}z`];
})).join('');

/**
 * The QR code of an address as SVG text, one unit a module: dark on white, whatever the page around it looks like, for scanners
 * don't read the reverse.
 *
 * @param title  what the code is, for who can't see it
 * @returns undefined where the address is too long for any code
 */
export function qrSvg(address: string, title: string): string | undefined {
  const modules = qrModules(address);
  if (!modules) return undefined;
  const side = modules.length + 2 * quietZone;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${side} ${side}" role="img" aria-label="${escaped(title)}" shape-rendering="crispEdges">`
    + `<title>${escaped(title)}</title><rect width="${side}" height="${side}" fill="#fff"/><path fill="#000" d="${pathOf(modules)}"/></svg>`;
}
