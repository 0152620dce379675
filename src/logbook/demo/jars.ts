import { DEMO_JARS } from '../../words/demo';
import { USUAL_SOLVENTS } from '../own-solvents';
import type { Pen } from './pen';
import { percent } from './said';

const THINNER = { name: DEMO_JARS.thinner, blend: USUAL_SOLVENTS.nitrocellulose };

/** The jars of the demo, and their ids. */
export function fillDemoJars(pen: Pen) {
  const [gloss, white, full] = [pen.newId(), pen.newId(), pen.newId()];
  pen.write(
    {
      kind: 'jar-filled',
      jar: gloss,
      name: DEMO_JARS.gloss,
      product: { finish: 'nitrocellulose', volumeSolids: percent(22) },
      thinner: THINNER,
      thinning: { of: 'lacquer', percent: percent(50) },
      retarder: { of: 'mix', solvent: '2-butoxyethanol', percent: percent(3) },
    },
    pen.daysAgo(14, 8, 20),
  );
  pen.write(
    {
      kind: 'jar-filled',
      jar: white,
      name: DEMO_JARS.white,
      product: { finish: 'nitrocellulose', volumeSolids: percent(26) },
      thinner: THINNER,
      thinning: { of: 'lacquer', percent: percent(60) },
      pigment: { shareOfSolids: percent(18), shape: 'grains' },
    },
    pen.daysAgo(7, 9),
  );
  pen.write(
    {
      kind: 'jar-filled',
      jar: full,
      name: DEMO_JARS.full,
      product: { finish: 'nitrocellulose', volumeSolids: percent(24) },
      thinner: THINNER,
      thinning: { of: 'mix', percent: percent(10) },
    },
    pen.daysAgo(13, 8, 40),
  );
  return { gloss, white, full };
}
