import type { Settings } from '../../logbook/fold/shop/settings';
import { STANDARD_PRESSURE_PA, standardPressurePa } from '../../science/air/atmosphere';

/** Pressure of the air at the altitude of the shop, Pa; at sea level where none was said. Left out: the weather. */
export const shopPressurePa = ({ altitude }: Settings): number =>
  altitude ? standardPressurePa(altitude.si) : STANDARD_PRESSURE_PA;
