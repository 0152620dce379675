import { convertLab65ToRgb, convertRgbToLab65, formatHex, parseHex } from 'culori/fn';
import { adaptXyz } from '../../science/colour/bradford';
import { type Lab, labToXyz, xyzToLab } from '../../science/colour/lab';

/** The colour of a `#rrggbb` or `#rgb` text, or undefined when it is not one. */
export function hexToLab(hex: string): Lab<'D65/2'> | undefined {
  const rgb = parseHex(hex.trim());
  if (!rgb || rgb.alpha !== undefined) return undefined;
  const { l: L, a, b } = convertRgbToLab65(rgb);
  return { white: 'D65/2', L, a, b };
}

/** A channel so far beyond what a screen shows is bent, not rounded (judgement). */
const BENT = 0.002;

/** A swatch: the colour as the screen can show it, and whether the screen had to bend it. For orientation only. */
export function labToHex(lab: Lab): { readonly hex: string; readonly isClipped: boolean } {
  const { L, a, b } = xyzToLab(adaptXyz(labToXyz(lab), 'D65/2'));
  const rgb = convertLab65ToRgb({ l: L, a, b });
  return {
    hex: formatHex({ ...rgb, mode: 'rgb' }),
    isClipped: [rgb.r, rgb.g, rgb.b].some((channel) => channel < -BENT || channel > 1 + BENT),
  };
}
