import { RELEASE_BINDERS } from '../finishes/release';
import type { Binder } from './lacquer';

/**
 * Nitrocellulose lacquer, plasticised as it is sold.
 *
 * Source: fitted to common practice; no measurement of diffusion in nitrocellulose lacquer was found. The product's data sheet
 * and logged checks outrank it.
 */
const NITROCELLULOSE: Binder = {
  densityKgM3: 1200,
  tgK: 323,
  chi: 0.4,
  glassDiffusivityM2S: 1.35e-15,
  wlfShare: 0.75,
  glassActivationJMol: 60_000,
};

const BINDERS: Readonly<Record<string, Binder>> = {
  nitrocellulose: NITROCELLULOSE,
  ...RELEASE_BINDERS,
};

/** The film former of a finish that hardens only by losing solvent; undefined for the others. */
export const binderOf = (finish: string): Binder | undefined =>
  Object.hasOwn(BINDERS, finish) ? BINDERS[finish] : undefined;
