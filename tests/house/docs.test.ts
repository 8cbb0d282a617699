import { existsSync, readdirSync, readFileSync } from 'node:fs';
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

test('the README names every custom property, part and event of the widget, and no other', () => {
  expect(all(readme, /`(--acre-[\w-]+)`/g)).toEqual(all(read('src/widget/look.ts'), /var\((--acre-[\w-]+)/g));
  const parts = all(readdirSync(new URL('src/widget', root)).map((file) => read(`src/widget/${file}`)).join(''), / part="([\w-]+)"/g);
  const listed = readme.slice(readme.indexOf('Parts:'), readme.indexOf('Custom properties:'));
  expect(all(listed, /`([\w-]+)`/g)).toEqual(parts);
  expect(all(readme, /`(acre-[a-z-]+)`/g)).toEqual(all(read('src/widget/events.ts'), /'(acre-[a-z-]+)':/g));
});

test('what README and DEVELOPERS.md link to is there', () => {
  const links = [readme, read('DEVELOPERS.md')].flatMap((text) => all(text, /\]\(([^)#:]+)\)/g));
  expect(links.length).toBeGreaterThan(3);
  expect(links.filter((link) => !existsSync(new URL(link, root)))).toEqual([]);
});
