import type { Shop } from '../../logbook/fold/fold';
import { matchOfJar } from '../../shop/colour/jars-of-match';
import { sidesOf, sideThatCounts } from '../../shop/colour/judge';
import { labToHex } from '../../shop/colour/screen-colour';

/** The colour of what is in a jar, where a match read it; undefined of a clear, or of what nobody read. */
export function jarTint(id: string, shop: Shop): string | undefined {
  const jar = shop.jars.get(id);
  const match = jar?.pigment ? matchOfJar(jar, shop) : undefined;
  const trial = match?.trials.find(({ id }) => id === match.accepted?.trial);
  const lab = match && trial && sideThatCounts(match, sidesOf(match, trial))?.surface?.lab;
  return lab && labToHex(lab).hex;
}
