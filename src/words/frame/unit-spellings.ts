// How people write the units that they type behind a number, in small letters, without spaces and full stops.
const SPELLINGS: Readonly<Record<string, string>> = {
  um: 'µm μm um micron microns',
  mil: 'mil mils thou',
  mm: 'mm',
  cm: 'cm',
  in: 'in " inch inches',
  m: 'm metre metres meter meters',
  ft: "ft ' foot feet",
  C: '°c c degc',
  F: '°f f degf',
  m2: 'm² m2 sqm',
  cm2: 'cm² cm2 sqcm',
  mm2: 'mm² mm2 sqmm',
  ft2: 'ft² ft2 sqft squarefeet',
  in2: 'in² in2 sqin squareinches',
  '%': '% percent',
  s: 's sec secs second seconds',
  min: 'min mins minute minutes',
  h: 'h hr hrs hour hours',
  d: 'd day days',
  months: 'month months',
  m3: 'm³ m3',
  ft3: 'ft³ ft3 cuft',
  'm3/h': 'm³/h m3/h',
  cfm: 'cfm',
  g: 'g gram grams',
  mL: 'ml cc',
  L: 'l litre litres liter liters',
  'fl-oz-us': 'floz oz floz(us)',
  'fl-oz-imperial': 'floz(imperial) floz oz',
  'g/mL': 'g/ml',
  'g/L': 'g/l',
  'lb/gal': 'lb/gal lbs/gal',
  'lb-cut': 'lb lbcut lbs poundcut',
  'ft2/gal': 'ft²/gal ft2/gal sqft/gal',
  'm2/L': 'm²/l m2/l',
  drops: 'drop drops',
  parts: 'part parts',
};

/** Whether a text behind a number means this unit: "fl. oz" is 'fl-oz-us'. */
export const meansUnit = (text: string, unit: string): boolean => {
  const bare = text.toLowerCase().replace(/[\s.]/g, '');
  return bare === unit.toLowerCase() || (SPELLINGS[unit] ?? '').split(' ').includes(bare);
};
