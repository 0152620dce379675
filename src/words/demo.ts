// English text of the demo shop. Shop, pieces and products are invented.

export const DEMO_PIECES = {
  ukulele: {
    name: 'Tenor ukulele, spruce top',
    note: 'New work. Twelve thin coats, then rub out to a gloss.',
  },
  clock: {
    name: 'Mantel clock case',
    note: 'Old lacquer crazed on the top; thinner softens it, spirit does not.',
  },
  caddy: { name: 'Tea caddy, white', note: 'Lid re-made in lime; white to match the body.' },
  stand: { name: 'Folding music stand', note: 'Two full coats, levelled, waiting for its gloss.' },
} as const;

export const DEMO_JARS = {
  gloss: 'Clear gloss, spray',
  white: 'White, spray',
  full: 'Clear gloss, full coats',
  thinner: 'Medium thinner',
} as const;

export const DEMO_GRITS = { level: 'P800, dry' } as const;

export const DEMO_MATCH = {
  name: 'Tea caddy, old white',
  base: 'White lacquer',
  tinters: ['Ochre', 'Raw umber', 'Red oxide'],
} as const;
