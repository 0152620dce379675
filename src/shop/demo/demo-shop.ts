import type { Entry } from '../../logbook/entry';
import { readDemoAir } from './air';
import { fillDemoJars } from './jars';
import { matchCaddy } from './match';
import { type PenNeeds, takePen } from './pen';
import { layCaddy, layClock, layStand, layUkulele } from './pieces';
import { planDemo, setDemoHours } from './plans';
import { fitOutRoom } from './room';

/** The logbook of an invented repair bench, as it would stand now: four pieces, each at another stage, and a white to match. */
export function demoShop(needs: PenNeeds): readonly Entry[] {
  const pen = takePen(needs);
  const stock = { jars: fillDemoJars(pen), air: readDemoAir(pen) };
  for (const lay of [layUkulele, layClock, layStand]) lay(pen, stock);
  matchCaddy(pen, layCaddy(pen, stock), stock.jars.shelf);
  fitOutRoom(pen);
  setDemoHours(pen);
  planDemo(pen);
  return pen.entries;
}
