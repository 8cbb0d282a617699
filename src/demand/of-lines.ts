import { countedOf } from './counted.ts';
import { Draw } from './draw.ts';
import { textOf } from './read-line.ts';
import { partSize, type Asked, type Requests } from './requests.ts';
import { count, emptyTally } from './tally.ts';

/** Lines between two signs of how far it is. */
const tellEvery = 100_000;

const mark = '"invented":true';

/** Answers put together that are the same to the letter. */
class Alike {
  readonly #alike = new Map<string, Asked>();

  add(text: string) {
    const known = this.#alike.get(text);
    if (known) known.buyers += 1;
    else this.#alike.set(text, { text, buyers: 1 });
  }

  get size() {
    return this.#alike.size;
  }

  get all(): Asked[] {
    return [...this.#alike.values()];
  }
}

/**
 * Requests as lines, read once and one after the other. Where no more than `most` differ, all are counted; else as many
 * are drawn by lot, and no more than these were ever held. With no bound they come part by part.
 *
 * @param most  to judge at the most
 * @param progress  hears now and then how many were read
 */
export function requestsOfLines(lines: AsyncIterable<string>, most: number, progress: (read: number) => void): Requests {
  const tally = emptyTally();
  let [seen, unreadable, isInvented] = [0, 0, false];

  async function* read() {
    for await (const line of lines) {
      seen += 1;
      isInvented ||= line.includes(mark);
      if (seen % tellEvery === 0) progress(seen);
      yield line;
    }
  }

  async function* all() {
    let part = new Alike();
    for await (const line of read()) {
      part.add(textOf(line));
      if (part.size < partSize) continue;
      yield part.all;
      part = new Alike();
    }
    if (part.size > 0) yield part.all;
  }

  async function* drawn() {
    const draw = new Draw<string>(most);
    let alike: Alike | undefined = new Alike();
    for await (const line of read()) {
      // Of what is kept the text is made anew: a line is a view of all that was read with it, and would keep that too.
      let text: string | undefined;
      const said = () => text ??= textOf(line);
      draw.offer(said);
      alike?.add(said());
      if (alike && alike.size > most) alike = undefined;
    }
    if (!alike) {
      alike = new Alike();
      for (const text of draw.drawn) alike.add(text);
    }
    for (let from = 0, { all: asked } = alike; from < asked.length; from += partSize) yield asked.slice(from, from + partSize);
  }

  return {
    parts: () => (most === Infinity ? all() : drawn()),
    take(part, outcomes) {
      for (const [index, { buyers }] of part.entries()) {
        const outcome = outcomes[index];
        if (outcome) count(tally, outcome, buyers);
        else unreadable += buyers;
      }
    },
    gathered: (toBring) => ({ counted: countedOf(tally, toBring), seen, unreadable, isInvented }),
    close: () => {},
  };
}
