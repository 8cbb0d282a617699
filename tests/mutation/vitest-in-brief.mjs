/** As much of vitest as the tests of these rooms use, without starting one for every mutant. */
import { ASYMMETRIC_MATCHERS_OBJECT, GLOBAL_EXPECT, JestAsymmetricMatchers, JestChaiExpect, JestExtend, setState } from '@vitest/expect';
import * as chai from 'chai';

export const expect = (value, message) => chai.expect(value, message);
for (const plugin of [JestExtend, JestChaiExpect, JestAsymmetricMatchers]) chai.use(plugin);
expect.closeTo = chai.expect.closeTo;
Object.assign(expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT]);
globalThis[GLOBAL_EXPECT] = expect;
setState({ assertionCalls: 0, isExpectingAssertions: false }, expect);

/** The tests of the files loaded last, in the order they stand there. */
export const found = [];
export const test = (name, run) => found.push({ name, run });
test.each = (rows) => (name, run) => {
  for (const row of rows) found.push({ name, run: () => run(...(Array.isArray(row) ? row : [row])) });
};
