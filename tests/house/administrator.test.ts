import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { relay } from '../../src/cli/commands/relay.ts';
import { problems } from '../../src/relay/problems.ts';
import { usualLimits } from '../../src/relay/settings/dealer.ts';
import { readSettings } from '../../src/relay/settings/read-settings.ts';
import { variables } from '../../src/relay/settings/variables.ts';

const root = new URL('../../', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, root), 'utf8');
const page = 'demo/docs/administrator.md';

const tables: Readonly<Record<string, readonly string[]>> = {
  settings: [
    '| setting | unsaid | what it is |', '| --- | --- | --- |',
    ...Object.entries(variables).map(([name, { preset, expected, does }]) => `| \`${name}\` | ${preset ? `\`${preset}\`` : '–'} | ${does} Expected: ${expected}. |`),
  ],
  problems: [
    '| code | status | what it says |', '| --- | --- | --- |',
    ...Object.entries(problems).map(([code, { status, message }]) => `| \`${code}\` | ${status} | ${message} |`),
  ],
};
const between = (name: string) => new RegExp(`(<!-- ${name} -->\n)[\\s\\S]*?(<!-- /${name} -->)`);

if (process.env.REGEN) {
  const written = Object.entries(tables).reduce((text, [name, rows]) => text.replace(between(name), (_all, begin: string, end: string) => `${begin}\n${rows.join('\n')}\n\n${end}`), read(page));
  writeFileSync(fileURLToPath(new URL(page, root)), written);
}

describe('the administrator’s page', () => {
  const text = read(page);

  test.each(Object.keys(tables))('tells the %s as they are', (name) => {
    expect(between(name).exec(text)?.[0]).toContain(tables[name]!.join('\n'));
  });

  test('names every task, and none that isn’t there', () => {
    const help = relay.details.join('\n');
    const tasks = [...help.matchAll(/^relay (\w+)/gm)].map(([, task]) => task!);
    const named = [...new Set([...text.matchAll(/`(?:acre-to-axle )?relay (\w+)/g)].map(([, task]) => task!))];
    expect(named.sort()).toEqual(tasks.sort());
  });

  test('tells a dealer’s limits as they are', () => {
    expect(text).toContain(`a dealer takes ${usualLimits.perHour} an hour and ${usualLimits.perDay} a day`);
    expect(text.replace(/\s+/g, ' ')).toContain(`counter with a token ${usualLimits.devicePerHour} an hour`);
  });
});

test('the example of settings is read without a fault', async () => {
  expect([...(await readSettings({}, fileURLToPath(new URL('demo/relay/settings.example.json', root)))).dealers.keys()]).toEqual(['hollowmere']);
});

test('the service and the container set nothing the relay doesn’t know', () => {
  for (const file of ['demo/relay/acre-to-axle-relay.service', 'demo/relay/Containerfile']) {
    const named = [...read(file).matchAll(/\b(ACRE_\w+)=/g)].map(([, name]) => name!);
    expect(named.length).toBeGreaterThan(1);
    expect(named.filter((name) => !(name in variables))).toEqual([]);
    expect(read(file)).toMatch(/dist\/cli\/acre-to-axle\.js"?,? "?relay/);
  }
});
