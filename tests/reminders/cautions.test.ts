import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CAUTION_ACTS, type CautionAct, SILENCEABLE } from '../../src/logbook/kinds/shop/caution-acts';
import { cautionsFor, HAZARDS, type Hazard } from '../../src/reminders/cautions';
import { CAUTIONS, cautionOf, WHO_DECIDES } from '../../src/words/air/cautions';

const ids = (act: CautionAct, hazards: readonly Hazard[], silenced: readonly string[] = []) =>
  cautionsFor(act, hazards, silenced).map(({ id }) => id);
const EVERY_ID = CAUTIONS.map(({ id }) => id);

// Common practice and the rules named in the cautions themselves; no source for the table.
describe('at the moment of the act', () => {
  test.each([
    {
      act: 'spray',
      hazards: ['solvent'],
      stand: ['ignition', 'phone', 'ventilation', 'mask', 'solvent', 'skin'],
    },
    { act: 'spray', hazards: [], stand: ['ignition', 'phone', 'ventilation', 'mask', 'skin'] },
    { act: 'spray', hazards: ['nitrocellulose'], stand: ['overspray'] },
    { act: 'spray', hazards: ['isocyanate'], stand: ['isocyanate'] },
    { act: 'brush', hazards: ['isocyanate'], stand: ['isocyanate'] },
    { act: 'mix', hazards: ['isocyanate'], stand: ['isocyanate'] },
    { act: 'spray', hazards: ['acid'], stand: ['acid'] },
    { act: 'spray', hazards: ['aerosol'], stand: ['aerosol'] },
    { act: 'mix', hazards: ['solvent'], stand: ['static', 'ignition'] },
    { act: 'brush', hazards: ['oil'], stand: ['rags'] },
    { act: 'end-day', hazards: [], stand: ['rags'] },
    { act: 'end-day', hazards: ['nitrocellulose'], stand: ['rags', 'overspray'] },
    { act: 'sand', hazards: ['old-opaque'], stand: ['lead', 'dust'] },
  ] as const)('$act with $hazards: $stand', ({ act, hazards, stand }) => {
    expect(ids(act, hazards)).toEqual(expect.arrayContaining([...stand]));
  });

  test.each([
    { act: 'spray', hazards: ['solvent'], without: 'isocyanate' },
    { act: 'brush', hazards: [], without: 'ignition' },
    { act: 'sand', hazards: [], without: 'lead' },
    { act: 'sand', hazards: ['old-opaque'], without: 'phone' },
  ] as const)('$act with $hazards: not $without', ({ act, hazards, without }) => {
    expect(ids(act, hazards)).not.toContain(without);
  });

  test('isocyanate comes first of all', () => {
    expect(ids('spray', HAZARDS)[0]).toBe('isocyanate');
  });
});

const anyHazards = fc.subarray([...HAZARDS]);
const anyAct = fc.constantFrom(...CAUTION_ACTS);

describe('silencing', () => {
  test('takes away no caution of fire, rags, isocyanate, acid or lead, whatever is silenced', () => {
    fc.assert(
      fc.property(anyAct, anyHazards, fc.subarray(EVERY_ID), (act, hazards, silenced) => {
        const grave = (one: string) => !SILENCEABLE.some((id) => id === one);
        expect(ids(act, hazards, silenced).filter(grave)).toEqual(ids(act, hazards).filter(grave));
      }),
    );
  });

  test('reaches no caution of fire', () => {
    const fire = CAUTIONS.filter(({ kind }) => kind === 'fire').map(({ id }) => id);
    expect(fire).toEqual(
      expect.arrayContaining(['ignition', 'phone', 'static', 'overspray', 'rags', 'aerosol']),
    );
    for (const id of [...fire, 'isocyanate', 'acid', 'lead', 'mask', 'ventilation'])
      expect(SILENCEABLE).not.toContain(id);
  });

  test.each(SILENCEABLE)('puts away %s where the person says so', (id) => {
    const act = id === 'dust' ? 'sand' : 'spray';
    expect(ids(act, [])).toContain(id);
    expect(ids(act, [], [id])).not.toContain(id);
  });
});

test('more in the jar never takes a caution away', () => {
  fc.assert(
    fc.property(anyAct, anyHazards, anyHazards, (act, some, more) => {
      expect(ids(act, [...some, ...more])).toEqual(expect.arrayContaining(ids(act, some)));
    }),
  );
});

describe.each(CAUTIONS)('$id', (caution) => {
  test('says what to do, why, what is usual, and who decides', () => {
    const { title, text, why, usual, decides } = cautionOf(caution.id);
    for (const said of [title, text, why, usual]) expect(said.length).toBeGreaterThan(8);
    expect(decides).toBe(WHO_DECIDES);
  });

  test('stands at some act', () => {
    expect(CAUTION_ACTS.some((act) => ids(act, HAZARDS).includes(caution.id))).toBe(true);
  });
});
