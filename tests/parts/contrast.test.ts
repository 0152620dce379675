import { readFileSync } from 'node:fs';
import { wcagContrast } from 'culori';
import { expect, test } from 'vitest';

const css = readFileSync('src/style/tokens.css', 'utf8');

function colour(token: string, theme: 'light' | 'dark'): string {
  const value = new RegExp(`--${token}: ([^;]+);`).exec(css)?.[1];
  if (value === undefined) throw new Error(`no token --${token}`);
  const [light, dark] = value.match(/#[0-9a-f]{6}/g) ?? [];
  if (light === undefined) throw new Error(`--${token} is no colour`);
  return theme === 'light' ? light : (dark ?? light);
}

// WCAG 2.2, success criteria 1.4.3 (4.5:1 text), 1.4.6 (7:1 text), 1.4.11 (3:1 edges of controls and pictures).
const PAIRS = [
  ...['text', 'quiet', 'amber', 'ready', 'wait', 'caution', 'danger'].flatMap((ink) =>
    ['ground', 'surface', 'raised'].map((paper) => ({ ink, paper, atLeast: 7 })),
  ),
  ...['ground', 'surface', 'raised'].map((paper) => ({ ink: 'edge', paper, atLeast: 3 })),
  { ink: 'on-lacquer', paper: 'lacquer', atLeast: 7 },
  { ink: 'solvent', paper: 'wet', atLeast: 3 },
  { ink: 'solvent', paper: 'coat', atLeast: 3 },
];

for (const theme of ['light', 'dark'] as const) {
  test.each(PAIRS)(`${theme}: $ink on $paper has at least $atLeast:1`, ({ ink, paper, atLeast }) => {
    expect(wcagContrast(colour(ink, theme), colour(paper, theme))).toBeGreaterThanOrEqual(atLeast);
  });
}
