import { expect, test } from 'vitest';
import { createTurns } from '../../src/logbook/turns';

test('jobs run one after another, in the order they come, and one that fails holds up none', async () => {
  const inTurn = createTurns();
  const said: string[] = [];
  const job = (name: string, ms: number) => async () => {
    said.push(`${name} begins`);
    await new Promise((resolve) => setTimeout(resolve, ms));
    said.push(`${name} ends`);
    if (name === 'b') throw new Error('b');
    return name;
  };
  const [a, b, c] = [inTurn(job('a', 9)), inTurn(job('b', 1)), inTurn(job('c', 0))];
  await expect(b).rejects.toThrow('b');
  expect([await a, await c]).toEqual(['a', 'c']);
  expect(said).toEqual(['a begins', 'a ends', 'b begins', 'b ends', 'c begins', 'c ends']);
});
