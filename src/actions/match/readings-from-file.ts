import { fail, type Result, succeed } from '../../result';
import { type FileReading, parseReadingFile } from '../../science/colour/readings/reading-files';
import type { White } from '../../science/colour/white-points';
import { isSpectral } from '../../shop/colour/lab-of';
import { FILE_PROBLEMS, fileLine } from '../../words/match/read';
import type { ReadingSaid } from './read-colour';

/** A reading out of a file, to be chosen from. */
export interface OfferedReading {
  readonly line: number;
  readonly name: string;
  readonly white: White;
  readonly reading: ReadingSaid;
}

/**
 * The readings in the text of a CSV or CGATS.17 file, or a sentence for each line that is wrong. A spectrum is taken before a
 * colour, as it can be seen under every light.
 * @param white the light of the match, taken where the file names none
 */
export function readingsFromFile(text: string, white: White): Result<OfferedReading[], string[]> {
  const parsed = parseReadingFile(text, white);
  if (parsed.ok) return succeed(parsed.value.flatMap((one) => offer(one, white)));
  return fail(
    parsed.failure.map(({ line, problem, found }) => fileLine(line, FILE_PROBLEMS[problem](found ?? ''))),
  );
}

function offer({ line, name, lab, spectrum }: FileReading, white: White): OfferedReading[] {
  if (spectrum && (isSpectral(white) || !lab))
    return [{ line, name, white, reading: { as: 'spectrum', ...spectrum } }];
  if (!lab) return [];
  const { L, a, b } = lab;
  return [{ line, name, white: lab.white, reading: { as: 'lab', L: part(L), a: part(a), b: part(b) } }];
}

const part = (value: number) => ({ text: String(Number(value.toFixed(6))), unit: 'ratio' }) as const;
