import { mkdirSync, writeFileSync } from 'node:fs';
import { test } from 'vitest';
import { openDemo } from './browser.ts';
const base = { format: 'acre-to-axle/answers/1', drivers: { least: 'experienced', under18: false } };
const cases: Record<string, unknown> = {
  nothing: { ...base, land: { gate: { value: 4, unit: 'ft' }, slope: 'flat', overhead: 'open' }, tasks: [{ task: 'lift-bales', must: true, weight: { value: 1500, unit: 'lb' }, height: { value: 9, unit: 'ft' } }, { task: 'mow-lawn', must: true, deck: 'belly' }, { task: 'dig', must: true, depth: { value: 9, unit: 'ft' }, perYear: 2 }], budget: { limit: { value: 15000, currency: 'USD' }, firm: true }, storage: { kind: 'shed', doorHeight: { value: 6, unit: 'ft' } } },
  some: { ...base, land: { gate: { value: 60, unit: 'in' }, slope: 'flat', overhead: 'open' }, tasks: [{ task: 'lift-pallets', must: true, weight: { value: 500, unit: 'lb' } }], budget: { limit: { value: 15000, currency: 'USD' }, firm: false } },
};
test('shots', async () => {
  mkdirSync('/tmp/shots-ways-out', { recursive: true });
  const demo = await openDemo();
  for (const [name, answers] of Object.entries(cases)) for (const [screen, width] of [['phone', 390], ['desktop', 1280]] as const) for (const scheme of ['light', 'dark'] as const) for (const language of ['en', 'de']) {
    const { page, complaints } = await demo.open({ viewport: { width, height: 900 }, colorScheme: scheme });
    await page.evaluate(async ([said, lang]) => { const el = document.querySelector('acre-to-axle') as any; el.language = lang; el.setAttribute('language', lang as string); el.setAttribute('lang', lang as string); el.answers = said; await el.updateComplete; }, [answers, language] as const);
    await page.waitForTimeout(300);
    const button = page.locator('acre-to-axle').getByRole('button', { name: /result|Ergebnis/i }).first();
    if (await button.count()) await button.click();
    await page.waitForTimeout(400);
    await page.screenshot({ path: `/tmp/shots-ways-out/${name}-${screen}-${scheme}-${language}.png`, fullPage: true });
    for (const part of ['conflicts', 'ways-out']) {
      const it = page.locator(`acre-to-axle [part="${part}"]`);
      if (await it.count()) console.log(name, screen, scheme, language, part, await it.innerText());
    }
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth);
    if (overflow || complaints.length) console.log('TROUBLE', name, screen, overflow, complaints);
    await page.close();
  }
  await demo.close();
}, 300000);
