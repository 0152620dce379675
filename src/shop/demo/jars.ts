import { DEMO_JARS } from '../../words/demo';
import { USUAL_RETARDER, USUAL_SOLVENTS } from '../jar/own-solvents';
import { describeShelf } from './ingredients';
import type { Pen } from './pen';
import { writeRecipes } from './recipes';
import { ml, months, percent } from './said';
import { weighUpWhite } from './weigh-up';

const THINNER = { name: DEMO_JARS.thinner, blend: USUAL_SOLVENTS.nitrocellulose };
const LIFE = { span: months(12), as: 'shelf' } as const;

/** The jars of the demo, and their ids: two filled by eye, and a white that was weighed up from its recipe. */
export function fillDemoJars(pen: Pen) {
  const [gloss, full] = [pen.newId(), pen.newId()];
  pen.write(
    {
      kind: 'jar-filled',
      jar: gloss,
      name: DEMO_JARS.gloss,
      product: { finish: 'nitrocellulose', volumeSolids: percent(22) },
      thinner: THINNER,
      thinning: { of: 'lacquer', percent: percent(50) },
      retarder: { of: 'mix', solvent: USUAL_RETARDER, percent: percent(3) },
      amount: ml(1000),
      life: LIFE,
    },
    pen.daysAgo(14, 8, 20),
  );
  pen.write(
    {
      kind: 'jar-filled',
      jar: full,
      name: DEMO_JARS.full,
      product: { finish: 'nitrocellulose', volumeSolids: percent(24) },
      thinner: THINNER,
      thinning: { of: 'mix', percent: percent(10) },
      amount: ml(500),
      life: LIFE,
    },
    pen.daysAgo(13, 8, 40),
  );
  const shelf = describeShelf(pen);
  return { shelf, gloss, white: weighUpWhite(pen, writeRecipes(pen, shelf)), full };
}
