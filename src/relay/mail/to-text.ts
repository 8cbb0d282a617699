import { onOneLine } from '../../handoff/one-line.ts';
import { flowed } from '../../handoff/mail/flowed.ts';
import type { Line, Part, Sheet } from './parts.ts';

const linked = ({ text, links = [] }: Line) => [text, ...links.map(({ text: name, href }) => `${name}: ${href}`)];

function linesOf(part: Part): string[] {
  switch (part.kind) {
    case 'block': return [...(part.heading === undefined ? [] : [part.heading.toUpperCase()]), ...(part.alerts ?? []), ...part.lines];
    case 'machine': return [part.name, part.price, ...part.groups.flatMap(({ heading, lines }) => [heading, ...lines.flatMap(linked)])];
    case 'line-up': return [part.heading.toUpperCase(), ...part.groups.flatMap(({ heading, bars }) => [heading, ...bars.map(({ text }) => text)])];
    case 'link': return [part.says, part.href];
  }
}

/** A mail as text, in lines of at most 78 signs that a reader may set anew (RFC 3676); an address longer than that stays whole. */
export const toText = ({ from, title, parts, footer }: Sheet): string => `${flowed([
  from, title,
  ...parts.flatMap((part) => ['', ...linesOf(part)]),
  '', '-- ', ...footer.flatMap(linked),
].map(onOneLine)).join('\n')}\n`;
