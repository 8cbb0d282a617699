import { BaseSequencer, type TestSequencerConstructor, type TestSpecification } from 'vitest/node';

/**
 * Files that take long begin first, so that none of them runs on alone at the end; the others come as they usually do.
 *
 * @param long  ends of their paths, the longest first
 */
export const longestFirst = (long: readonly string[]): TestSequencerConstructor => class extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const usually = await super.sort(files);
    const first = long.flatMap((end) => usually.filter(({ moduleId }) => moduleId.endsWith(end)));
    return [...first, ...usually.filter((file) => !first.includes(file))];
  }
};
