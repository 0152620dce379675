import type { Shop } from '../../logbook/fold/fold';
import type { Coat } from '../../logbook/fold/piece/pieces';
import { coatAir } from './blush-seen';
import { type JarBlush, jarBlush } from './jar-blush';
import { measuredAir } from './measured-air';

/** How cold the film of a coat got, against the dew point of the air it was laid in, °C. */
export interface CoatBlush extends JarBlush {
  readonly dewPointC: number;
}

/** Undefined where no reading speaks for the coat, for a finish that does not blush, and for a flash of thinner, which leaves no film. */
export function coatBlush(coat: Coat, shop: Shop): CoatBlush | undefined {
  const jar = shop.jars.get(coat.jar);
  const reading = coatAir(coat, shop);
  if (!jar || !reading || coat.how === 'flash') return undefined;
  const air = measuredAir(reading, shop);
  const blush = jarBlush(jar, air);
  return blush && { ...blush, dewPointC: air.dewPointC };
}
