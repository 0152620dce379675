/** A thing to coat by its measures, m. */
export type Shape =
  | { readonly is: 'panel'; readonly lengthM: number; readonly widthM: number }
  | { readonly is: 'box'; readonly lengthM: number; readonly widthM: number; readonly heightM: number }
  | { readonly is: 'cylinder'; readonly diameterM: number; readonly heightM: number }
  | { readonly is: 'disc'; readonly diameterM: number }
  | { readonly is: 'sphere'; readonly diameterM: number };

/** Area to coat, m2: one side of a panel or disc, the whole outside of a box, turning or ball. */
export function shapeAreaM2(shape: Shape): number {
  switch (shape.is) {
    case 'panel':
      return shape.lengthM * shape.widthM;
    case 'box':
      return (
        2 * (shape.lengthM * shape.widthM + shape.lengthM * shape.heightM + shape.widthM * shape.heightM)
      );
    case 'cylinder':
      return Math.PI * shape.diameterM * (shape.heightM + shape.diameterM / 2);
    case 'disc':
      return (Math.PI * shape.diameterM ** 2) / 4;
    case 'sphere':
      return Math.PI * shape.diameterM ** 2;
  }
}

/** Usual areas of whole things, m2 (common practice, no source). */
export const USUAL_AREAS_M2 = {
  body: 0.24,
  mandolin: 0.21,
  'jewellery-box': 0.19,
  table: 0.9,
} as const;

/** By how much slim legs, rails and edges take more than flat faces of the same area, from and to (common practice, no source). */
export const SHAPE_FACTORS = { flat: { from: 1, to: 1 }, slim: { from: 1.5, to: 2 } } as const;
export type ShapeFactor = keyof typeof SHAPE_FACTORS;
