/** Several quantities of normal spread: each with noise of its own, and all with what they share. */
export interface Normal {
  /** Logarithm of the density at these values, but for a constant. */
  logDensity(values: readonly number[]): number;
  /** The likely size of each thing shared, given the values. */
  shared(values: readonly number[]): readonly number[];
  /**
   * One more quantity given the values: its mean is `weights` times them, and this its variance.
   * @param along so much of each thing shared is in it
   * @param itsNoise its own noise
   */
  oneMore(
    along: readonly number[],
    itsNoise: number,
  ): { readonly weights: readonly number[]; readonly variance: number };
}

/** What several quantities share: so much of it in each, and how far it is spread. */
export interface Shared {
  readonly along: readonly number[];
  readonly spread: number;
}

/**
 * A normal distribution of covariance N + sum s^2 a a^T: what is shared is eliminated in closed form.
 * @param noise spread of each quantity's own noise
 * Source: Rasmussen and Williams, Gaussian Processes for Machine Learning (2006), A.2; Cholesky factor (from memory).
 */
export function createNormal(noise: readonly number[], shared: readonly Shared[]): Normal {
  const size = noise.length;
  const covariance = (i: number, j: number): number =>
    shared.reduce(
      (sum, { along, spread }) => sum + (along[i] as number) * (along[j] as number) * spread ** 2,
      i === j ? (noise[i] as number) ** 2 : 0,
    );
  const factor = cholesky(size, covariance);
  const logRoot = factor.reduce((sum, row, i) => sum + Math.log(row[i] as number), 0);
  return {
    logDensity(values) {
      const whitened = forward(factor, values);
      return -0.5 * whitened.reduce((sum, value) => sum + value * value, 0) - logRoot;
    },
    shared(values) {
      const weighed = backward(factor, forward(factor, values));
      return shared.map(
        ({ along, spread }) =>
          spread ** 2 * along.reduce((sum, part, i) => sum + part * (weighed[i] as number), 0),
      );
    },
    oneMore(along, itsNoise) {
      const more = shared.map(({ along: parts, spread }, s) => ({
        spread,
        parts,
        own: (along[s] as number) * spread,
      }));
      const covariances = noise.map((_, i) =>
        more.reduce((sum, { own, parts, spread }) => sum + own * spread * (parts[i] as number), 0),
      );
      const whitened = forward(factor, covariances);
      const before = more.reduce((sum, { own }) => sum + own ** 2, itsNoise ** 2);
      const variance = whitened.reduce((rest, value) => rest - value ** 2, before);
      return { weights: backward(factor, whitened), variance };
    },
  };
}

function cholesky(size: number, at: (i: number, j: number) => number): number[][] {
  const lower: number[][] = [];
  for (let i = 0; i < size; i++) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      let rest = at(i, j);
      for (let k = 0; k < j; k++) rest -= (row[k] as number) * ((lower[j] ?? row)[k] as number);
      row.push(i === j ? Math.sqrt(rest) : rest / ((lower[j] as number[])[j] as number));
    }
    lower.push(row);
  }
  return lower;
}

function forward(lower: readonly (readonly number[])[], values: readonly number[]): number[] {
  const out: number[] = [];
  for (const [i, row] of lower.entries()) {
    let rest = values[i] as number;
    for (let k = 0; k < i; k++) rest -= (row[k] as number) * (out[k] as number);
    out.push(rest / (row[i] as number));
  }
  return out;
}

function backward(lower: readonly (readonly number[])[], values: readonly number[]): number[] {
  const out = [...values];
  for (let i = lower.length - 1; i >= 0; i--) {
    for (let k = i + 1; k < lower.length; k++)
      out[i] = (out[i] as number) - ((lower[k] as number[])[i] as number) * (out[k] as number);
    out[i] = (out[i] as number) / ((lower[i] as number[])[i] as number);
  }
  return out;
}
