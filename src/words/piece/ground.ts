// English text of what stands beside the finish: filler, filler paste, grain sealer, glue.

const SORTS = {
  'pore-filler': { label: 'Pore filler', usual: '24 to 72 h', hint: '24 to 72 h, then sand it back' },
  'filler-paste': {
    label: 'Filler paste',
    usual: 'about an hour',
    hint: 'binding scraps in acetone: about an hour, several times, then level',
  },
  'grain-sealer': { label: 'Grain sealer', usual: '1 to 4 h', hint: '1 to 4 h' },
  glue: { label: 'Glue and clamp', usual: '12 to 24 h', hint: '12 to 24 h in the clamps' },
} as const;
type Sort = keyof typeof SORTS;

export const GROUND_WORDS = {
  title: 'Filler, sealer or glue',
  sort: 'What you put on',
  sorts: SORTS,
  choose: 'Choose what you put on.',
  product: 'Product',
  productHint: 'Optional. As written on the can.',
  tinted: { label: 'Tinted', hint: 'its colour shows in the pores' },
  waits: 'Waits, by its sheet',
  waitsHint: (sort: Sort): string => `Empty: ${SORTS[sort].usual}. Common practice, no source.`,
  when: 'When',
  log: 'Log it',
  logged: (what: string, until: string): string => `${what} logged. It waits until about ${until}.`,
  cautions: {
    'pore-filler': 'Rags with oil filler heat up by themselves: into the closed metal can with water.',
    'filler-paste':
      'Acetone catches fire from a spark far off: no flame or heater, moving air, gloves. Its safety data sheet comes first.',
    'grain-sealer': '',
    glue: '',
  },
  /** "Pore filler, tinted: Walnut" */
  name: (sort: Sort, isTinted: boolean, product: string | undefined): string =>
    `${SORTS[sort].label}${isTinted ? ', tinted' : ''}${product ? `: ${product}` : ''}`,
  short: (sort: Sort, count: number): string =>
    count > 1 ? `${SORTS[sort].label} ×${count}` : SORTS[sort].label,
  inWood: (names: readonly string[]): string => `In and on the wood: ${names.join(', ')}.`,
  waited: (wait: string): string => `waits ${wait} by its sheet`,
  usual: 'the usual wait',
} as const;
