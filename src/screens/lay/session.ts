import type { Shop } from '../../logbook/fold/fold';
import type { Jar } from '../../logbook/fold/mix/jars';
import { cautionsDue } from '../../shop/cautions/cautions-due';
import type { CoatWay } from './coat-draft';

/** The act by which cautions know a way of laying a coat. */
export const actOf = (how: CoatWay): 'spray' | 'brush' =>
  how === 'spray' || how === 'flash' ? 'spray' : 'brush';

/** Whether every caution for this way of working with this jar was confirmed in this session. */
export const isSessionOpen = (shop: Shop, jar: Jar, how: CoatWay, nowMs: number): boolean =>
  cautionsDue(shop, jar, actOf(how), nowMs).length === 0;
