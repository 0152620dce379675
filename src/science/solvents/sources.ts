/** Where the values of the solvent table come from. */
export const SOURCES = {
  crc: 'CRC Handbook of Chemistry and Physics, physical constants and enthalpy of vaporisation tables',
  cas: 'CAS Common Chemistry',
  yaws: 'Yaws, boiling point compilation',
  webbook: 'NIST Chemistry WebBook',
  poling:
    'Poling, Prausnitz and O’Connell, The Properties of Gases and Liquids, 5th ed., appendix A (Antoine)',
  landolt: 'Landolt-Boernstein, New Series IV/20 (Antoine)',
  perry: 'Perry’s Chemical Engineers’ Handbook, 8th ed., liquid density (DIPPR equation 105), evaluated',
  'pocket-guide': 'NIOSH Pocket Guide to Chemical Hazards',
  niosh: 'NIOSH recommended limits and IDLH documentation',
  osha: '29 CFR 1910.1000, table Z-1',
  serat: 'Serat et al., DIPPR flash point set',
  'research-89': 'Research data set of 89 solvents (solvent selection tool)',
  'research-70': 'Research data set of 70 solvents (solvent selection tool)',
  glossary: 'Safety data sheet glossary, evaporation rates',
  producer: 'Solvent producers’ data sheets',
  'haz-map': 'Haz-Map',
  handbook: 'General handbook knowledge',
  'computed-here':
    'Molar mass from the formula; diffusivity by Fuller, Schettler and Giddings (1966) at 1 atm; latent heat by ' +
    'Clausius-Clapeyron from the Antoine constants; others as their note says',
} as const;

export type SourceKey = keyof typeof SOURCES;

/** How a value was had: seen in its source, calculated from seen values, fitted to few points, or recalled and not re-read. */
export type How = 'read' | 'computed' | 'derived' | 'from memory';
