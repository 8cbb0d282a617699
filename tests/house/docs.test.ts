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

const readme = read('README.md');

test('what README and DEVELOPERS.md link to is there', () => {
  const links = [readme, read('DEVELOPERS.md')].flatMap((text) => all(text, /\]\(([^)#:]+)\)/g));
  expect(links.length).toBeGreaterThan(3);
  expect(links.filter((link) => !existsSync(new URL(link, root)))).toEqual([]);
});
