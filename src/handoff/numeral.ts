/**
 * Choices written as one whole number: an asymmetric numeral system (J. Duda, "Asymmetric numeral systems",
 * arXiv:1311.2540, the range variant), without renormalisation. What is likely costs little: a choice of odds p
 * lengthens the number by log2(1/p) bits. With equal odds it is the mixed-radix number everybody knows.
 */

/** How likely each of some choices is against the others: whole numbers, of which one at least is above zero. */
export type Odds = readonly number[];

/** All alike likely. */
export const even = (count: number): Odds => Array.from({ length: count }, () => 1);

interface Choice {
  odds: Odds;
  index: number;
}

const sum = (odds: Odds) => odds.reduce((all, each) => all + each, 0);

/**
 * Takes down choices, or reads them back in the same order: one description of a document serves both ways.
 */
export interface Coder {
  /**
   * @param index  what is chosen, while writing; left aside while reading
   * @returns what is chosen
   */
  choose(odds: Odds, index: number | undefined): number;
}

export interface Writer extends Coder {
  /** All that was chosen. */
  numeral(): bigint;
}

/** Takes down choices. The last one is folded in first, so that the first is read first; choices of index 0 at the end cost nothing. */
export function writer(): Writer {
  const choices: Choice[] = [];
  return {
    choose(odds, index = 0) {
      choices.push({ odds, index });
      return index;
    },
    numeral: () => choices.reduceRight((number, { odds, index }) => {
      const width = BigInt(odds[index]!);
      return (number / width) * BigInt(sum(odds)) + BigInt(sum(odds.slice(0, index))) + (number % width);
    }, 0n),
  };
}

export interface NumeralReader extends Coder {
  /** Whether nothing is left that wasn't read. */
  isSpent(): boolean;
}

/** Choices of the longest document that is read; a number made to hold more of them would keep a page busy. */
const mostChoices = 20_000;

/** Reads choices back from a number; beyond the most there are it takes the first of each, and never is spent. */
export function reader(numeral: bigint): NumeralReader {
  let number = numeral;
  let count = 0;
  return {
    choose(odds) {
      if (count++ >= mostChoices) return 0;
      const total = BigInt(sum(odds));
      let rest = Number(number % total);
      let index = 0;
      while (rest >= odds[index]!) rest -= odds[index++]!;
      number = (number / total) * BigInt(odds[index]!) + BigInt(rest);
      return index;
    },
    isSpent: () => number === 0n && count <= mostChoices,
  };
}
