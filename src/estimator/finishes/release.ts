import type { Binder } from '../laws/lacquer';

/**
 * Film formers besides nitrocellulose that harden only by losing solvent.
 * Source: glass transitions and densities from memory, typical of plasticised lacquers of the kind; diffusivity fitted to common
 * practice: no measurement was found for any of them. The data sheet and logged checks outrank it.
 */
export const RELEASE_BINDERS = {
  /** Let go of their solvent more slowly than nitrocellulose does. */
  acrylic: {
    densityKgM3: 1150,
    tgK: 323,
    chi: 0.4,
    glassDiffusivityM2S: 1.0e-15,
    wlfShare: 0.75,
    glassActivationJMol: 60_000,
  },
  /** Cellulose acetate butyrate with its plasticiser. */
  cab: {
    densityKgM3: 1180,
    tgK: 325,
    chi: 0.4,
    glassDiffusivityM2S: 1.35e-15,
    wlfShare: 0.75,
    glassActivationJMol: 60_000,
  },
  /** Softer, and its solvent is small: dry soon, hard late. */
  shellac: {
    densityKgM3: 1110,
    tgK: 315,
    chi: 0.2,
    glassDiffusivityM2S: 4e-16,
    wlfShare: 0.75,
    glassActivationJMol: 60_000,
  },
} as const satisfies Readonly<Record<string, Binder>>;
