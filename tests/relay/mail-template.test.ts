import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compiled } from '../../src/relay/mail/compile-templates.ts';

const folder = new URL('../../src/relay/mail/', import.meta.url);
const source = readFileSync(new URL('templates/mail.mjml', folder), 'utf8');
const kept = new URL('templates.generated.ts', folder);

const page = (body: string) => `<mjml><mj-body><mj-section><mj-column><mj-text>${body}</mj-text></mj-column></mj-section></mj-body></mjml>`;

test('what is kept is what the template makes; REGEN=1 writes it anew', async () => {
  const made = await compiled(source, 'mail');
  if (process.env.REGEN) writeFileSync(kept, made);
  expect(readFileSync(kept, 'utf8')).toBe(made);
});

describe('a template', () => {
  test('becomes a function whose lists and slots have types, and every slot is escaped', async () => {
    const made = await compiled(page('{{#rows}}<p title="{{name}}">{{#cells}}{{text}}{{/cells}}</p>{{/rows}}'), 'try');
    expect(made).toContain('export interface TrySlotsRowsCells {\n  text: string;\n}');
    expect(made).toContain('export interface TrySlotsRows {\n  name: string;\n  cells: readonly TrySlotsRowsCells[];\n}');
    expect(made).toContain('title="${escaped(each0.name)}"');
    expect(made.match(/\$\{(?!escaped\(|its\.rows\.map|each0\.cells\.map)/g)).toBeNull();
  });

  test.each([['{{#a}}x'], ['x{{/a}}'], ['{{#a}}{{#b}}{{/a}}{{/b}}']])('%s is refused', async (body) => {
    await expect(compiled(page(body), 'try')).rejects.toThrow(/open|closed/);
  });

  test('with a tag that is none is refused', async () => {
    await expect(compiled('<mjml><mj-body><mj-nothing /></mj-body></mjml>', 'try')).rejects.toThrow();
  });

  test('whose text looks like code of ours stays text', async () => {
    expect(await compiled(page('`${x}` \\'), 'try')).toContain('\\`\\${x}\\` \\\\');
  });
});
