import { isWhite, type White } from '../white-points';

/** What can be wrong with a line of a reading file. */
export type FileProblem =
  | 'too-large'
  | 'too-many-rows'
  | 'too-many-columns'
  | 'no-readings'
  | 'no-colour-columns'
  | 'unfinished'
  | 'open-quote'
  | 'wrong-cell-count'
  | 'wrong-row-count'
  | 'not-a-number'
  | 'impossible-colour'
  | 'unknown-light'
  | 'spectrum-steps'
  | 'spectrum-range';

/** One thing wrong with a file, by the line (from 1) on which its owner finds it. */
export interface FileIssue {
  readonly line: number;
  readonly problem: FileProblem;
  /** What stood there, cut short; absent when the line as a whole is meant. */
  readonly found?: string;
}

/** One row of cells, with the line it came from. */
export interface TableRow {
  readonly line: number;
  readonly cells: readonly string[];
}

/** A file as rows under named columns. */
export interface ReadingTable {
  readonly columnLine: number;
  readonly columns: readonly string[];
  readonly rows: readonly TableRow[];
  /** Light named in the file's header, if any. */
  readonly light: LightNames;
}

/** Light and observer as a file names them: `D50` and `2 degree`. */
export interface LightNames {
  readonly illuminant?: string;
  readonly observer?: string;
}

/** Far more than any instrument writes at once (judgement, no source). */
export const READING_FILE_LIMITS = { characters: 2_000_000, rows: 5000, columns: 500, issues: 20 } as const;

/** An issue whose text, which comes from a stranger, is cut short. */
export function issue(line: number, problem: FileProblem, found?: string): FileIssue {
  return found === undefined ? { line, problem } : { line, problem, found: found.slice(0, 40) };
}

/**
 * The white that a file's words name, with what is unsaid taken from the fallback; undefined when it is none of ours.
 * The observer is the first number of its text: "10", "2 degree", "10°".
 */
export function whiteFrom({ illuminant, observer }: LightNames, fallback: White): White | undefined {
  const [light = '', angle = ''] = fallback.split('/');
  const namedAngle = observer === undefined ? angle : (/\d+/.exec(observer)?.[0] ?? '');
  const named = `${(illuminant ?? light).trim().toUpperCase()}/${namedAngle}`;
  return isWhite(named) ? named : undefined;
}
