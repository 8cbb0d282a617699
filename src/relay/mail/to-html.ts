import type { Line, Part, Sheet } from './parts.ts';
import { mailHtml, type MailSlotsParts } from './templates.generated.ts';

const none: MailSlotsParts = { block: [], machine: [], lineUp: [], link: [] };
/** A line behind a mark hangs under its first word. */
const lookOf = (text: string) => (/^[*+!?–] /.test(text) ? 'item' : 'said');
const texts = (lines: readonly string[]) => lines.map((text) => ({ text }));
const linked = ({ text, links = [] }: Line) => ({ text, links, look: lookOf(text) });

function slotsOf(part: Part): MailSlotsParts {
  switch (part.kind) {
    case 'block': return { ...none, block: [{ heading: part.heading === undefined ? [] : texts([part.heading]), alerts: texts(part.alerts ?? []), lines: part.lines.map((text) => ({ text, look: lookOf(text) })) }] };
    case 'machine': return { ...none, machine: [{ ...part, groups: part.groups.map(({ heading, lines }) => ({ heading, lines: lines.map(linked) })) }] };
    case 'line-up': return {
      ...none,
      lineUp: [{
        ...part,
        groups: part.groups.map(({ heading, bars }) => ({
          heading,
          bars: bars.map(({ text, percent, own }) => {
            const bar = [{ percent: String(percent) }];
            return { text, solid: own ? [] : bar, open: own ? bar : [] };
          }),
        })),
      }],
    };
    case 'link': return { ...none, link: [part] };
  }
}

/** A mail as HTML that fetches nothing: no picture, no font, no style of another place. */
export const toHtml = ({ parts, footer, ...said }: Sheet): string => mailHtml({ ...said, parts: parts.map(slotsOf), footer: footer.map(linked) });
