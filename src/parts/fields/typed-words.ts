import { plainNumber, type Typed } from '../../logbook/typed';
import { UNITS, type Unit } from '../../logbook/unit';
import { unitWord } from '../../words/frame/logbook';
import { numberWords, type UnitSystem } from '../../words/quantities';

type Pairs = Readonly<Partial<Record<Unit, Unit>>>;

/** What a unit is to a reader of the other system; grams, hours and percentages are the same in both. */
const OTHER: Readonly<Record<UnitSystem, Pairs>> = {
  us: {
    um: 'mil',
    C: 'F',
    mm: 'in',
    cm: 'in',
    m: 'ft',
    mm2: 'in2',
    cm2: 'in2',
    m2: 'ft2',
    m3: 'ft3',
    'm3/h': 'cfm',
    mL: 'fl-oz-us',
    L: 'fl-oz-us',
    'm2/L': 'ft2/gal',
    'g/mL': 'lb/gal',
    'g/L': 'lb-cut',
  },
  metric: {
    mil: 'um',
    F: 'C',
    in: 'mm',
    ft: 'm',
    in2: 'cm2',
    ft2: 'm2',
    ft3: 'm3',
    cfm: 'm3/h',
    'fl-oz-us': 'mL',
    'fl-oz-imperial': 'mL',
    'ft2/gal': 'm2/L',
    'lb/gal': 'g/mL',
    'lb-cut': 'g/L',
  },
};

/** A quantity as it was typed; where its unit is of the other system, with the reader's own beside it: "85 µm (3.3 mil)". */
export function typedWords({ text, unit }: Typed, units: UnitSystem): string {
  const typed = `${text.trim()} ${unitWord(unit)}`.trim();
  const own = OTHER[units][unit];
  const number = plainNumber(text);
  if (own === undefined || number === undefined) return typed;
  return `${typed} (${figure(UNITS[own].fromSi(UNITS[unit].toSi(number)))} ${unitWord(own)})`;
}

/** Two figures, three from a hundred on: what is told beside another number is no more exact than that. */
const figure = (value: number): string =>
  numberWords(Number(value.toPrecision(Math.abs(value) < 100 ? 2 : 3)), 6);
