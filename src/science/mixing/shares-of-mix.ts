import { fail, type Result, succeed } from '../../result';
import { type By, quantity } from './amount';
import { andThen, forEach, known, type MixFailure, sumOver } from './failure';
import type { OpenLine } from './line';

// With M the mass and V the volume of the whole mix, m0 and v0 those of the lines already weighed, a_i the shares by mass and b_j
// those by volume:
//   M = m0 + sum(a_i) M + sum(b_j rho_j) V
//   V = v0 + sum(a_i / rho_i) M + sum(b_j) V
// Two equations in M and V, solved exactly.

const shareBy = ({ amount, massKg }: OpenLine, by: By): number =>
  massKg === undefined && amount.unit === 'share' && amount.by === by ? amount.value : 0;

/** Masses of all lines, kg, once the whole is found that the shares of the mix refer to. */
export function sharesOfMix(lines: readonly OpenLine[]): Result<number[], MixFailure> {
  const weighedKg = lines.reduce((sum, { massKg = 0 }) => sum + massKg, 0);
  const byMass = lines.reduce((sum, line) => sum + shareBy(line, 'mass'), 0);
  const byVolume = lines.reduce((sum, line) => sum + shareBy(line, 'volume'), 0);
  if (byMass >= 1 || byVolume >= 1) return fail({ kind: 'shares-over-whole' });
  if (byVolume > 0) return withVolumes(lines, weighedKg, byMass, byVolume);
  const wholeKg = weighedKg / (1 - byMass);
  return succeed(lines.map((line) => line.massKg ?? shareBy(line, 'mass') * wholeKg));
}

function withVolumes(
  lines: readonly OpenLine[],
  weighedKg: number,
  byMass: number,
  byVolume: number,
): Result<number[], MixFailure> {
  const found = forEach(lines, ({ ingredient }) => known(ingredient.densityKgM3, 'no-density', ingredient));
  const weighed = sumOver(lines, ({ ingredient, massKg = 0 }) => quantity(massKg, 'volume', ingredient));
  return andThen(found, (densities) =>
    andThen(weighed, (weighedM3) => {
      const density = (i: number) => densities[i] as number;
      const m3PerKg = lines.reduce((sum, line, i) => sum + shareBy(line, 'mass') / density(i), 0);
      const kgPerM3 = lines.reduce((sum, line, i) => sum + shareBy(line, 'volume') * density(i), 0);
      const determinant = (1 - byMass) * (1 - byVolume) - m3PerKg * kgPerM3;
      if (determinant <= 0) return fail({ kind: 'shares-over-whole' });
      const wholeKg = (weighedKg * (1 - byVolume) + kgPerM3 * weighedM3) / determinant;
      const wholeM3 = (weighedM3 * (1 - byMass) + m3PerKg * weighedKg) / determinant;
      return succeed(
        lines.map(
          (line, i) =>
            line.massKg ?? shareBy(line, 'mass') * wholeKg + shareBy(line, 'volume') * density(i) * wholeM3,
        ),
      );
    }),
  );
}
