import type { Reporter } from 'vitest/node';

interface Count {
  readonly covered: number;
  readonly total: number;
}
/** The part of Istanbul's coverage map that is read here. */
interface CoverageMap {
  files(): string[];
  fileCoverageFor(file: string): { toSummary(): { readonly lines: Count; readonly branches: Count } };
}

const share = (counts: readonly Count[]): string => {
  const sum = (of: keyof Count) => counts.reduce((total, count) => total + count[of], 0);
  return `${((100 * sum('covered')) / sum('total')).toFixed(1)} %`;
};

/** Says for each folder of src how much of it the tests ran through, a line each. */
export default class CoverageLines implements Reporter {
  onCoverage(coverage: unknown): void {
    const map = coverage as CoverageMap;
    const files = map.files();
    const folderOf = (file: string): string => /src\/\w+/.exec(file)?.[0] ?? file;
    for (const folder of new Set(files.map(folderOf))) {
      const seen = files
        .filter((file) => folderOf(file) === folder)
        .map((file) => map.fileCoverageFor(file).toSummary());
      const lines = share(seen.map((one) => one.lines));
      const branches = share(seen.map((one) => one.branches));
      process.stdout.write(
        `Tests ran through ${lines} of the lines of ${folder}, ${branches} of its branches.\n`,
      );
    }
  }
}
