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
  /** It holds a tracer: small lozenges run through it. */
  readonly isTraced?: boolean | undefined;
  readonly pattern?: 'none' | 'hatch' | 'cross' | 'dash' | undefined;
}

/** What lies in the wood, or on it without a film of its own: drawn, not to scale. */
export interface GroundMark {
  readonly is: 'pore-filler' | 'filler-paste' | 'grain-sealer' | 'glue';
  readonly label: string;
  readonly isTinted: boolean;
}

/** A coat in picture units: where its surface and its foot lie (y grows downwards) and how wet it is. */
export interface LayerBand {
  readonly layer: FilmLayer;
  /** 0 for the first coat. */
  readonly number: number;
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
export function stackBands(layers: readonly FilmLayer[], { woodTop, perUm }: Frame): LayerBand[] {
  let foot = woodTop;
  return layers.map((layer, number) => {
    const top = foot - (layer.dryUm + layer.solventUm) * perUm;
    const band = { layer, number, foot, top, wetness: wetness(layer) };
    foot = top;
    return band;
  });
}

export interface Drop {
  readonly x: number;
  readonly y: number;
}

const TRIES = 12;
const APART = 0.7; // the least gap between drops, as a share of the side of one drop's square

/** Drops of solvent in a band: each stands for the same amount, so a band that dries loses them one by one. */
export function solventDrops(band: LayerBand, { width, perUm }: Frame, areaPerDrop: number): Drop[] {
  const radius = dropRadius(band);
  const count = Math.round((band.layer.solventUm * perUm * width) / areaPerDrop);
  const room = band.foot - band.top - 2 * radius;
  const drops: Drop[] = [];
  for (let n = 1; drops.length < count && n <= count * TRIES; n++) {
    const x = radius + scatter(n, band.number) * (width - 2 * radius);
    const y = band.top + radius + scatter(n, band.number + 0.5) * room;
    const isFree = drops.every((drop) => Math.hypot(drop.x - x, drop.y - y) > APART * Math.sqrt(areaPerDrop));
    if (isFree) drops.push({ x, y });
  }
  return drops;
}

/** A number from 0 to 1 that looks random but is always the same, so that drops stay where they are. */
function scatter(n: number, seed: number): number {
  return Math.abs((Math.sin(n * 12.9898 + seed * 78.233) * 43758.5453) % 1);
}

/** A drop must fit into its band, however thin. */
export function dropRadius({ top, foot }: LayerBand): number {
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
