import type { Film } from './film';

/** What is in each layer at a moment: the old finish first (where it is in play), then coat by coat. */
export interface Profile {
  readonly timeS: number;
  readonly layers: readonly { readonly dryM: number; readonly solventM: number }[];
}

/** Splits what the film holds among its layers, by dry depth. */
export function profileOf(film: Film, layers: readonly number[], timeS: number): Profile {
  let e = 0;
  let inElement = 0;
  const rows = layers.map((dryM) => {
    let left = dryM;
    let solventM = 0;
    while (left > 1e-12 && e < film.nodes - 1) {
      const size = film.dz[e] as number;
      const take = Math.min(left, size - inElement);
      const middle = (inElement + take / 2) / size;
      for (const u of film.u) {
        const here = (u[e] as number) + ((u[e + 1] as number) - (u[e] as number)) * middle;
        solventM += here * take * (1 - (film.pigment[e] as number));
      }
      left -= take;
      inElement += take;
      if (inElement >= size - 1e-15) {
        e++;
        inElement = 0;
      }
    }
    return { dryM, solventM };
  });
  return { timeS, layers: rows };
}

/** Takes dry thickness off the top of layers. */
export function takeOff(layers: number[], removedM: number): void {
  let left = removedM;
  for (let k = layers.length - 1; k >= 0 && left > 0; k--) {
    const gone = Math.min(left, layers[k] as number);
    layers[k] = (layers[k] as number) - gone;
    left -= gone;
  }
}
