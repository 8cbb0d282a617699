/**
 * What a framed wizard and the page around it say to each other: short texts, so that a size can be held to.
 *
 * - `ready`: the frame to whoever is around it; says nothing but that it is there
 * - `here`: the page to the frame; from then on the frame knows whom it may tell
 * - `height`: the frame to that page alone, in CSS pixels
 */
export type FrameMessage = { says: 'ready' } | { says: 'here' } | { says: 'height'; height: number };

const format = 'acre-to-axle/frame/1';

/** Longest message that is read [characters], and the greatest height that is taken for one [CSS px]. */
const [longest, highest] = [4_096, 50_000];

export const written = (message: FrameMessage): string => JSON.stringify({ format, ...message });

function parsed(text: string): { format?: unknown; says?: unknown; height?: unknown } {
  try {
    return Object(JSON.parse(text)) as object;
  } catch {
    return {};
  }
}

/** A message of ours, or undefined: pages send each other all kinds of things, and none of them is ours to answer. */
export function readMessage(data: unknown): FrameMessage | undefined {
  if (typeof data !== 'string' || data.length > longest) return undefined;
  const { format: of, says, height } = parsed(data);
  if (of !== format) return undefined;
  if (says === 'ready' || says === 'here') return { says };
  return says === 'height' && typeof height === 'number' && height > 0 && height <= highest ? { says, height } : undefined;
}
