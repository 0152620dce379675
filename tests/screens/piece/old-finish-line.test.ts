import { expect, test } from 'vitest';
import type { EntryBody } from '../../../src/logbook/entry';
import { eventsOf } from '../../../src/screens/piece/events';
import { PIECE } from '../../logbook/entries';
import { aShop } from '../../parts/an-outlook';

const bodies: readonly EntryBody[] = [
  {
    kind: 'spot-tested',
    piece: PIECE,
    solvent: 'lacquer-thinner',
    dwell: { text: '20', unit: 's' },
    reading: 'wrinkles',
    isTopOnly: true,
  },
  { kind: 'old-finish-seen', piece: PIECE, opaque: true, signs: ['crazed'], layers: 2, madeAbout: 1935 },
  { kind: 'lead-tested', piece: PIECE, finding: 'found', method: 'Swab' },
  { kind: 'lead-tested', piece: PIECE, finding: 'untested', correction: 'It was another chair.' },
];

test('drops, looks and answers about lead stand in the history; lead has no undo, only a correction', () => {
  const { piece, shop } = aShop(...bodies.map((body, at) => ({ hour: at + 1, body })));
  const told = eventsOf(piece, shop).slice(-4);
  expect(told.map(({ what, how, isCorrectedInWriting }) => [what, how, isCorrectedInWriting])).toEqual([
    ['Drop of lacquer thinner', '20 s: wrinkles, the top layer only', false],
    [
      'Old finish looked at',
      'Opaque: white or a colour; two layers; crazed or cracked; made about 1935',
      false,
    ],
    ['Lead', 'Tested: lead found: Swab', true],
    ['Lead', 'Not tested after all; corrected: It was another chair.', true],
  ]);
});
