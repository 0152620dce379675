import { writeBackup } from '../../../src/logbook/backup/backup';
import { type Entry, type EntryBody, inItsVersion } from '../../../src/logbook/entry';
import { newId } from '../../../src/logbook/ids/new-id';
import type { FINISHES } from '../../../src/logbook/kinds/mix/jar';
import type { Job } from '../../../src/planner/starting-plans/job';
import { startPlan } from '../../../src/planner/starting-plans/start-plan';
import { saidOf, usualDraft } from '../../../src/screens/mix/jar/jar-draft';
import { asPlanned } from '../../../src/shop/plan/as-planned';

export type Finish = (typeof FINISHES)[number];

const HOUR_MS = 3_600_000;
const JOB: Record<Finish, Job> = {
  nitrocellulose: 'full-clear',
  acrylic: 'full-clear',
  cab: 'full-clear',
  shellac: 'shellac',
  waterborne: 'waterborne',
  precatalysed: 'catalysed',
  conversion: 'catalysed',
  urethane: 'catalysed',
};

/** A shop with one jar of a finish, one piece with two coats of it in damp air, and its plan, as a backup. */
export async function shopOf(finish: Finish) {
  const [jar, piece] = [newId(), newId()];
  const nowMs = Date.now();
  const how = finish === 'shellac' ? 'pad' : 'spray';
  const film = { by: 'wet', wetFilm: { text: '80', unit: 'um' } } as const;
  const { coatsADay, steps } = startPlan(JOB[finish], newId);
  const bodies: readonly (readonly [hoursAgo: number, body: EntryBody])[] = [
    [9, { kind: 'jar-filled', jar, ...saidOf({ ...usualDraft(finish, false), name: 'My jar' }) }],
    [8, { kind: 'piece-started', piece, name: 'Small box', base: 'sealed' }],
    [7, { kind: 'piece-planned', piece, job: JOB[finish], coatsADay, steps: steps.map(asPlanned) }],
    [6, { kind: 'coat-laid', piece, jar, how, film }],
    [
      1,
      {
        kind: 'air-read',
        temperature: { text: '17', unit: 'C' },
        humidity: { text: '65', unit: '%' },
        movement: 'gentle',
      },
    ],
    [0.5, { kind: 'coat-laid', piece, jar, how, film }],
  ];
  const entries = bodies.map(([hoursAgo, body]) => {
    const at = new Date(nowMs - hoursAgo * HOUR_MS).toISOString();
    return inItsVersion({ ...body, id: newId(), at, zone: 'Europe/Berlin' }) as Entry;
  });
  return { jar, piece, backup: await writeBackup({ entries, setAside: [] }, nowMs) };
}
