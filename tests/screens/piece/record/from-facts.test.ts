import { expect, test } from 'vitest';
import { type EntryBody, inItsVersion } from '../../../../src/logbook/entry';
import { fold } from '../../../../src/logbook/fold/fold';
import { disclosureFrom } from '../../../../src/screens/piece/record/from-facts';
import { zoneFacts } from '../../../../src/shop/record/zone-facts';
import { oldFinishOf } from '../../../../src/shop/stack/old-finish';
import { standsOf } from '../../../../src/shop/zone/stands';
import { entry, fillJar, id, JAR, layCoat, PIECE, sand, startPiece } from '../../../logbook/entries';

const CHIP = id(0xc1);
const zone: EntryBody = {
  kind: 'zone-described',
  piece: PIECE,
  zoneId: CHIP,
  name: 'Lower bout',
  is: 'overspray',
  overspray: { text: '60', unit: 'mm' },
};
const seen = (opaque: boolean): EntryBody => ({
  kind: 'old-finish-seen',
  piece: PIECE,
  opaque,
  signs: [],
  layersSeen: 'off-white over cream over brown',
});
const lead = (finding: 'found' | 'none-found' | 'treat-as-lead', method?: string): EntryBody => ({
  kind: 'lead-tested',
  piece: PIECE,
  finding,
  ...(method && { method }),
});
const dropIn: EntryBody = { ...layCoat(), how: 'brush-fill', zoneId: CHIP } as EntryBody;

function told(...bodies: readonly EntryBody[]): string {
  const all = [startPiece(), { ...fillJar(JAR), tracerNm: 365 } as EntryBody, ...bodies];
  const shop = fold(all.map((body, n) => inItsVersion(entry(n + 1, body))));
  const piece = shop.pieces.get(PIECE) ?? expect.unreachable();
  const facts = standsOf(piece, shop).map((stand) => zoneFacts(stand, shop));
  return disclosureFrom(facts, oldFinishOf(PIECE, shop), 'metric');
}

test.each([
  { what: 'nothing done', done: [], says: 'No new material is recorded.' },
  {
    what: 'a coat on all of it',
    done: [layCoat()],
    says: 'All of it: 1 coat of Gloss. Clear only; colour untouched. Tracer in coat 1, seen at 365 nm.',
  },
  {
    what: 'a coat that was sanded off again',
    done: [layCoat(), { ...sand(), removed: { text: '90', unit: 'um' } }],
    says: 'No new material is recorded.',
  },
  {
    what: 'a place with two drops',
    done: [zone, dropIn, dropIn],
    says: 'Lower bout: Overspray; 2 applications of Gloss. Clear only; colour untouched. New material reaches 60 mm over sound finish. Tracer in coat 1 and coat 2, seen at 365 nm.',
  },
  {
    what: 'a place where nothing was laid',
    done: [zone],
    says: 'Lower bout: Overspray; nothing added. New material reaches 60 mm over sound finish.',
  },
  {
    what: 'lead found, with the layers that are left',
    done: [seen(true), lead('found', 'swab')],
    says: 'Lead in the old finish: found, by swab. Layers of it: off-white over cream over brown.',
  },
  {
    what: 'an opaque finish that nobody tested',
    done: [seen(true)],
    says: 'Lead in the old finish: not tested. Layers of it: off-white over cream over brown.',
  },
  {
    what: 'an opaque finish that is taken to hold it',
    done: [seen(true), lead('treat-as-lead')],
    says: 'Lead in the old finish: not tested, treated as lead. Layers of it: off-white over cream over brown.',
  },
  {
    what: 'an opaque finish in which none was found',
    done: [seen(true), lead('none-found', 'laboratory')],
    says: 'No new material is recorded.',
  },
  { what: 'a clear old finish', done: [seen(false)], says: 'No new material is recorded.' },
])('of $what it tells the facts and no more', ({ done, says }) => {
  expect(told(...(done as readonly EntryBody[]))).toBe(says);
});
