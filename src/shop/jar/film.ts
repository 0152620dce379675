import type { Jar } from '../../logbook/fold/mix/jars';
import { obstructionFactor } from '../../science/film/pigment-packing';
import { isSolventId, type SolventId } from '../../science/solvents/solvents';
import { type Finish, USUAL_SOLVENTS } from './own-solvents';
import { volumesInMix } from './volumes-in-mix';

/** What the drying of a coat takes from the jar it came from. */
export interface JarFilm {
  readonly finish: Finish;
  /** Of the mix as it is sprayed, a fraction of its volume. */
  readonly volumeSolids: number;
  /** Each once; the shares are of the volume that evaporates and add up to one. */
  readonly solvents: readonly { readonly id: SolventId; readonly share: number }[];
  /** Volume fraction of the dry film. */
  readonly pigment: number;
  /** Factor by which the pigment slows solvent on its way through the dry film. */
  readonly passage: number;
  /** Where the solvents in the can itself are from. */
  readonly ownSolvents: 'said' | 'common-practice';
  /** Solvents that this version does not know; the others stand in for them. */
  readonly unknownSolvents: readonly string[];
}

/** What of a jar decides the film. */
export type JarMix = Pick<Jar, 'product' | 'thinner' | 'thinning' | 'retarder' | 'pigment'>;

/** Breadth of metallic and pearl flakes over their thickness (common practice, no source). */
const USUAL_ASPECT = 30;

/** The film that a jar gives. Throws a RangeError where thinner and retarder leave no room for lacquer. */
export function jarFilm(jar: JarMix): JarFilm {
  const { finish, volumeSolids, solvents } = jar.product;
  const mix = volumesInMix(jar);
  const volatile: Parts = [
    ...poured(solvents ?? USUAL_SOLVENTS[finish], mix.lacquer * (1 - volumeSolids.si)),
    ...poured(jar.thinner.blend, mix.thinner),
    ...(jar.retarder ? poured([{ solvent: jar.retarder.solvent, share: 1 }], mix.retarder) : []),
  ].filter(({ volume }) => volume > 0);
  const pigment = jar.pigment?.shareOfSolids.si ?? 0;
  return {
    finish,
    volumeSolids: mix.lacquer * volumeSolids.si,
    solvents: shares(volatile),
    pigment,
    passage: obstructionFactor(pigment, aspectOf(jar)),
    ownSolvents: solvents ? 'said' : 'common-practice',
    unknownSolvents: [
      ...new Set(volatile.map(({ solvent }) => solvent).filter((name) => !isSolventId(name))),
    ],
  };
}

/** What a flash coat of this jar's thinner alone is made of. */
export const thinnerShares = ({ thinner }: JarMix): JarFilm['solvents'] => shares(poured(thinner.blend, 1));

/** The same jar mixed without its retarder. */
export const withoutRetarder = ({ retarder: _, ...jar }: Jar): Jar => jar;

type Parts = readonly { readonly solvent: string; readonly volume: number }[];

function poured(
  blend: readonly { readonly solvent: string; readonly share: number }[],
  volume: number,
): Parts {
  const whole = blend.reduce((sum, { share }) => sum + share, 0);
  return blend.map(({ solvent, share }) => ({ solvent, volume: (volume * share) / whole }));
}

function shares(parts: Parts): JarFilm['solvents'] {
  const volumes = new Map<SolventId, number>();
  for (const { solvent, volume } of parts)
    if (isSolventId(solvent)) volumes.set(solvent, (volumes.get(solvent) ?? 0) + volume);
  // Nothing known at all: one in the middle of every thinner.
  if (volumes.size === 0) volumes.set('n-butyl-acetate', 1);
  const whole = [...volumes.values()].reduce((sum, volume) => sum + volume, 0);
  return [...volumes].map(([id, volume]) => ({ id, share: volume / whole }));
}

const aspectOf = ({ pigment }: JarMix): number =>
  pigment?.shape === 'flakes' ? (pigment.aspect?.si ?? USUAL_ASPECT) : 1;
