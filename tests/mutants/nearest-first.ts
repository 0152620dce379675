import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** How many folders two paths have in common from the front. */
function shared(a: string, b: string): number {
  const others = b.split('/');
  return a.split('/').findIndex((part, i) => part !== others[i]);
}

/** The tests that stand nearest to the mutated file run first, and the quick ones before the slow: the first to fail ends the run. */
export class NearestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const { config, cache } = this.ctx;
    const mutated = (config.related ?? []).map((file) => file.replace(/^.*\/src\//, ''));
    const near = ({ moduleId }: TestSpecification): number =>
      Math.max(0, ...mutated.map((file) => shared(file, moduleId.replace(/^.*\/tests\//, ''))));
    const took = ({ project, moduleId }: TestSpecification): number =>
      cache.getFileTestResults(`${project.name}:${moduleId.slice(config.root.length + 1)}`)?.duration ?? 0;
    return [...files].sort((a, b) => near(b) - near(a) || took(a) - took(b));
  }
}
