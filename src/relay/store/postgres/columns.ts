/**
 * Rows as the arrays that `unnest` takes apart again: one statement for any number of them.
 *
 * @param types  column and its type, in the statement's order
 */
export function columnsOf<T extends object>(rows: readonly T[], types: { readonly [Name in keyof T]: string }): { values: unknown[][]; from: string } {
  const names = Object.keys(types) as (keyof T & string)[];
  return {
    values: names.map((name) => rows.map((row) => row[name])),
    from: `unnest(${names.map((name, place) => `$${place + 1}::${types[name]}[]`).join(', ')}) WITH ORDINALITY AS row (${[...names, 'place'].map((name) => `"${name}"`).join(', ')})`,
  };
}
