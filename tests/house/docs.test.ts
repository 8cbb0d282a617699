import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { mayImport } from './rooms.ts';

const root = new URL('../../', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, root), 'utf8');
const all = (text: string, pattern: RegExp) => [...new Set([...text.matchAll(pattern)].map(([, word]) => word!))].sort();

test('the table of imports in DEVELOPERS.md is the one the code is held to, for every room there is', () => {
  const written = Object.fromEntries(
    [...read('DEVELOPERS.md').matchAll(/^\| (\w+) \| ([\w, –]+) \|$/gm)].map(([, room, list]) => [room, list === '–' ? [] : list!.split(', ')]),
  );
  const rooms = Object.keys(mayImport).filter((room) => existsSync(new URL(`src/${room}`, root)));
  const held = Object.fromEntries(rooms.map((room) => [room, mayImport[room]!.filter((other) => rooms.includes(other))]));
  delete written.room;
  expect(written).toEqual(held);
});

test.each(['README.md', 'DEVELOPERS.md', '.github/CONTRIBUTING.md'])('what %s links to is there', (document) => {
  const links = all(read(document), /\]\(([^)#:]+)\)/g);
  expect(links.length).toBeGreaterThan(0);
  expect(links.filter((link) => !existsSync(new URL(link, new URL(document, root))))).toEqual([]);
});
