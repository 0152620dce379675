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

export const DEMO_INGREDIENTS = {
  clear: { name: 'Clear lacquer, gloss', note: 'Stir before every use; the can is from the spring.' },
  base: { name: 'White lacquer' },
  white: { name: 'White tinter' },
  ochre: { name: 'Ochre' },
  umber: { name: 'Raw umber' },
  red: { name: 'Red oxide' },
  black: { name: 'Black', note: 'Strong: weigh it out as a let-down when little is wanted.' },
  dye: { name: 'Amber dye' },
  flatting: { name: 'Flatting paste' },
  thinner: { name: 'Medium thinner' },
  retarder: { name: 'Slow retarder' },
} as const;

export const DEMO_RECIPES = {
  clear: {
    name: 'Clear for spraying',
    first: 'Came out dry on a warm afternoon: needs retarder.',
    note: 'Flows out well at 21 °C. Thin coats, twelve of them for an instrument.',
  },
  full: { name: 'Clear for full coats', note: 'Two coats, then leave it alone for ten days.' },
  caddy: {
    name: 'White for the tea caddy',
    first: 'Too yellow beside the body. Less ochre, a touch of umber.',
    note: 'Close enough for the inside of the lid; the outside goes on in Match.',
  },
  amber: { name: 'Amber toner', note: 'Three light passes over spruce, then clear.' },
  edge: {
    name: 'Brown edge shading',
    where: 'Two fingers wide along the edge, fading inwards.',
    note: 'Spray it dry and low, and stop before it looks right: the clear darkens it.',
  },
  satin: { name: 'Satin for insides', note: 'Last coat only; flat coats on flat coats go grey.' },
} as const;

export const DEMO_CHIP = {
  name: 'Lower front edge',
  note: 'Knocked in transport; the colour below is whole. Clear drop fill. The photos are drawn for the demo.',
  uv: 'The lacquer glows greenish yellow; the chip stays dark.',
} as const;

export const DEMO_GRITS = { level: 'P800, dry' } as const;

export const DEMO_MATCH = { name: 'Tea caddy, old white' } as const;

export const DEMO_FILTER = {
  name: 'Organic vapour, with prefilter',
  basis: 'The filter maker’s change-out schedule for these solvents.',
} as const;
