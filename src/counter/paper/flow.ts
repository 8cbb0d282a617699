/** What stands in each column of a paper, in order, by its place among all. */
export interface Flow {
  columns: readonly (readonly number[])[];
  /** What is left of each column. */
  left: readonly number[];
  /** Whether each column holds what stands in it: what is higher than any column stands in one of its own. */
  holds: boolean;
}

export interface Block {
  height: number;
  /** It may stand earlier than its place, to fill what is left of a column. */
  floats?: true | undefined;
}

/**
 * Puts blocks one under another, and into the next column where one is full; nothing is split. Where the next has no room the tallest
 * that floats and has fills it.
 *
 * @param roomIn  height of a column, by its place, in the unit of the blocks
 */
export function flowed(blocks: readonly Block[], roomIn: (column: number) => number): Flow {
  const columns: number[][] = [[]];
  const open = blocks.map((_, index) => index);
  let left = roomIn(0);
  let holds = left >= 0;
  const put = (block: number) => {
    columns.at(-1)!.push(block);
    open.splice(open.indexOf(block), 1);
    left -= blocks[block]!.height;
  };
  while (open.length > 0) {
    const [next] = open;
    const fits = (block: number) => blocks[block]!.height <= left;
    const [filler] = open.filter((block) => blocks[block]!.floats && fits(block)).sort((a, b) => blocks[b]!.height - blocks[a]!.height);
    if (fits(next!)) put(next!);
    else if (filler !== undefined) put(filler);
    else if (left < roomIn(columns.length - 1) || (columns.length === 1 && left < roomIn(1))) {
      columns.push([]);
      left = roomIn(columns.length - 1);
    } else {
      holds = false;
      put(next!);
    }
  }
  const heightOf = (column: readonly number[]) => column.reduce((sum, block) => sum + blocks[block]!.height, 0);
  return { columns, left: columns.map((column, index) => roomIn(index) - heightOf(column)), holds };
}
