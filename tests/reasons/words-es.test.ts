import { expect, test } from 'vitest';
import { es } from '../../src/reasons/words/es.ts';

test.each([
  ['implemento', 'e'], ['Iris', 'e'], ['hilo', 'e'], ['“Instalación”', 'e'], ['Índigo', 'e'],
  ['hielo', 'y'], ['hierba', 'y'], ['hora', 'y'], ['Rill', 'y'],
])('before “%s” a Spanish list ends with “%s”', (last, and) => {
  expect(es.list(['uno', 'dos', last])).toBe(`uno, dos ${and} ${last}`);
});
