import type { ByClass, OldClass } from './old-finish';
import type { OldFinishSign, UvLook } from './signs';

/** What an old finish looks like; what was not looked at is left out. */
export interface Looks {
  readonly isOpaque?: boolean;
  readonly uv?: UvLook;
  readonly signs: readonly OldFinishSign[];
  /** The year in which the piece was made, about. */
  readonly madeAbout?: number;
}

// How often each class looks so. Common practice of restorers and shares by judgement, no source.
const OPAQUE: ByClass = {
  'wax-or-oil': 0.02,
  shellac: 0.05,
  waterborne: 0.35,
  'solvent-lacquer': 0.35,
  'oil-varnish': 0.6,
  cured: 0.35,
};
const GLOWS: { readonly [F in OldClass]: { readonly [U in UvLook]: number } } = {
  'wax-or-oil': { orange: 0.05, 'greenish-yellow': 0.15, milky: 0.5, dark: 0.3 },
  shellac: { orange: 0.6, 'greenish-yellow': 0.15, milky: 0.1, dark: 0.15 },
  waterborne: { orange: 0.05, 'greenish-yellow': 0.1, milky: 0.35, dark: 0.5 },
  'solvent-lacquer': { orange: 0.05, 'greenish-yellow': 0.5, milky: 0.25, dark: 0.2 },
  'oil-varnish': { orange: 0.1, 'greenish-yellow': 0.4, milky: 0.2, dark: 0.3 },
  cured: { orange: 0.05, 'greenish-yellow': 0.15, milky: 0.35, dark: 0.45 },
};
/** Of the signs these tell classes apart; the others are only cautions. */
const SIGNS: { readonly [S in OldFinishSign]?: ByClass } = {
  crazed: {
    'wax-or-oil': 0.03,
    shellac: 0.25,
    waterborne: 0.05,
    'solvent-lacquer': 0.35,
    'oil-varnish': 0.25,
    cured: 0.08,
  },
  'oily-smell': {
    'wax-or-oil': 0.4,
    shellac: 0.05,
    waterborne: 0.05,
    'solvent-lacquer': 0.05,
    'oil-varnish': 0.3,
    cured: 0.05,
  },
};
/** Before this year the finish was hardly to be had, so that it would be a later coat (from memory). */
const HARDLY_BEFORE: { readonly [F in OldClass]?: number } = {
  'solvent-lacquer': 1920,
  cured: 1950,
  waterborne: 1985,
};
/** How often an old piece has been finished again later (judgement, no source). */
const REFINISHED = 0.25;

/** How likely a film of this class looks so. */
export function chanceOfLooks(finish: OldClass, { isOpaque, uv, signs, madeAbout }: Looks): number {
  const opaque = isOpaque === undefined ? 1 : isOpaque ? OPAQUE[finish] : 1 - OPAQUE[finish];
  const glow = uv === undefined ? 1 : GLOWS[finish][uv];
  const age = madeAbout !== undefined && madeAbout < (HARDLY_BEFORE[finish] ?? 0) ? REFINISHED : 1;
  return signs.reduce((chance, sign) => chance * (SIGNS[sign]?.[finish] ?? 1), opaque * glow * age);
}
