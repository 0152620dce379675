/** One coat as the picture needs it. Thicknesses in micrometres. */
export interface FilmLayer {
  readonly key: string;
  readonly label: string;
  readonly dryUm: number;
  /** Solvent still held, as the thickness it takes up. */
  readonly solventUm: number;
  /** The colour of the dry coat; amber, as clear lacquer over wood, when left out. */
  readonly tint?: string | undefined;
  /** Drawn over the band, so that kinds of coat differ by more than their hue. */
  readonly pattern?: 'none' | 'hatch' | 'cross' | 'dash' | undefined;
}

/** A coat in picture units: where its surface and its foot lie (y grows downwards) and how wet it is. */
export interface Band {
  readonly layer: FilmLayer;
  readonly top: number;
  readonly foot: number;
  readonly wetness: number;
}

export interface Frame {
  readonly width: number;
  /** y of the bare wood. */
  readonly woodTop: number;
  /** Picture units for one micrometre. */
  readonly perUm: number;
}

/** The share of a coat's thickness that is solvent, 0 to 1. */
export function wetness({ dryUm, solventUm }: FilmLayer): number {
  const thickUm = dryUm + solventUm;
  return thickUm > 0 ? solventUm / thickUm : 0;
}

/** Stacks the coats, first laid first, upwards from the wood and to scale. */
export function stackBands(layers: readonly FilmLayer[], { woodTop, perUm }: Frame): Band[] {
  let foot = woodTop;
  return layers.map((layer) => {
    const band = {
      layer,
      foot,
      top: foot - (layer.dryUm + layer.solventUm) * perUm,
      wetness: wetness(layer),
    };
    foot = band.top;
    return band;
  });
}

export interface Drop {
  readonly x: number;
  readonly y: number;
}

// The plastic number's powers spread points evenly however many are drawn (M. Roberts' R2 sequence).
const PLASTIC = 1.324717957244746;
const TRIES = 6;
const APART = 3.4; // drop radii between two drops' centres

/** Drops of solvent in a band: each stands for the same amount, so a band that dries loses them one by one. */
export function solventDrops(band: Band, { width, perUm }: Frame, areaPerDrop: number): Drop[] {
  const radius = dropRadius(band);
  const count = Math.round((band.layer.solventUm * perUm * width) / areaPerDrop);
  const room = band.foot - band.top - 2 * radius;
  const drops: Drop[] = [];
  for (let n = 1; drops.length < count && n <= count * TRIES; n++) {
    const x = radius + ((band.foot * PLASTIC + n / PLASTIC) % 1) * (width - 2 * radius);
    const y = band.top + radius + ((0.5 + n / PLASTIC ** 2) % 1) * room;
    if (drops.every((drop) => Math.hypot(drop.x - x, drop.y - y) > APART * radius)) drops.push({ x, y });
  }
  return drops;
}

/** A drop must fit into its band, however thin. */
export function dropRadius({ top, foot }: Band): number {
  return Math.min(2, Math.max(0.5, (foot - top) * 0.16));
}

/** A round length for the scale, about a third of the film, in the unit given; and that length in micrometres. */
export function scaleStep(
  spanUm: number,
  umPerUnit: number,
): { readonly value: number; readonly um: number } {
  const wanted = Math.max(spanUm, 1) / umPerUnit / 3;
  const decade = 10 ** Math.floor(Math.log10(wanted));
  const value = decade * ([5, 2, 1].find((step) => step * decade <= wanted) ?? 1);
  const rounded = Number(value.toPrecision(1));
  return { value: rounded, um: rounded * umPerUnit };
}
