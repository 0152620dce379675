/** A pigment's absorption and scattering, wavelength by wavelength, per unit of amount. */
export interface Pigment {
  readonly K: readonly number[];
  readonly S: readonly number[];
}
