/** The own shop, or the demo shop with its invented pieces. */
export type WhichShop = 'own' | 'demo';
