/** A jar of clear lacquer, as its entry says it: 24 % solids, half as much thinner. */
export const clearJar = (jar: string) =>
  ({
    kind: 'jar-filled',
    jar,
    name: 'Clear',
    product: { finish: 'nitrocellulose', volumeSolids: { text: '24', unit: '%' } },
    thinner: {
      name: 'Medium',
      blend: [
        { solvent: 'acetone', share: 0.4 },
        { solvent: 'n-butyl-acetate', share: 0.6 },
      ],
    },
    thinning: { of: 'lacquer', percent: { text: '50', unit: '%' } },
  }) as const;
