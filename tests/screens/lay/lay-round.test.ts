import { expect, test } from 'vitest';
import { fail, succeed } from '../../../src/result';
import { layRound } from '../../../src/screens/lay/lay-round';

test('a round of which one coat is refused is sent again without laying the others twice', async () => {
  const asked: string[] = [];
  const refuses = new Set(['box']);
  const layOn = async (piece: string) => {
    asked.push(piece);
    return refuses.has(piece)
      ? fail({ sentence: 'Not before it was started.', fields: {} })
      : succeed({ id: `coat on ${piece}` });
  };
  const laid = new Map<string, string>();
  const pieces = ['frame', 'box', 'chair'];
  expect((await layRound(pieces, laid, layOn)).ok).toBe(false);
  expect(asked).toEqual(['frame', 'box']);
  refuses.clear();
  expect(await layRound(pieces, laid, layOn)).toEqual(
    succeed(['coat on frame', 'coat on box', 'coat on chair']),
  );
  expect(asked).toEqual(['frame', 'box', 'box', 'chair']);
});
